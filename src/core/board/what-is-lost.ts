import { bindingWords } from '../keymap/action-words.ts';
import { bindingOn } from '../keymap/lookup.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { Board, KeyId, Keymap } from '../keymap/types.ts';
import { keyName } from './key-name.ts';

/** A key that has no place on another board, and what is bound to it, in words. */
export interface LostKey {
  readonly key: KeyId;
  readonly name: string;
  readonly bindings: readonly { readonly layer: string; readonly words: string }[];
}

/** What another board takes from a design, and what it leaves. */
export interface BoardLosses {
  readonly keptBindings: number;
  readonly lostBindings: number;
  /** Only keys on which something is bound, in the board's order. */
  readonly keys: readonly LostKey[];
  /** Chords that lose a key; with fewer than two left one goes. */
  readonly chords: readonly {
    readonly name: string;
    readonly lost: readonly string[];
    readonly goes: boolean;
  }[];
  /** Notes of the diary that lose a key they are pinned to. */
  readonly notes: number;
}

/** What the design loses if its keys become those of another board; a key that becomes none loses its place. */
export function whatIsLost(keymap: Keymap, became: Readonly<Record<KeyId, KeyId>>): BoardLosses {
  const stays = (key: KeyId) => Object.hasOwn(became, key);
  const { board } = keymap;
  const bound = board.keys
    .map(({ id }) => lostKey(keymap, board, id))
    .filter(({ bindings }) => bindings.length > 0);
  const count = (keys: readonly LostKey[]) => keys.reduce((sum, { bindings }) => sum + bindings.length, 0);
  const keys = bound.filter(({ key }) => !stays(key));
  const lostBindings = count(keys);
  return {
    keptBindings: count(bound) - lostBindings,
    lostBindings,
    keys,
    chords: chordsOf(keymap).flatMap((chord) => {
      const lost = chord.keys.filter((key) => !stays(key)).map((key) => keyName(board, key));
      const goes = chord.keys.length - lost.length < 2;
      return lost.length === 0 ? [] : [{ name: chord.name ?? chord.id, lost, goes }];
    }),
    notes: (keymap.diary ?? []).filter((note) => note.keys?.some((key) => !stays(key))).length,
  };
}

function lostKey(keymap: Keymap, board: Board, key: KeyId): LostKey {
  const bindings = keymap.layers.flatMap((layer) => {
    const binding = bindingOn(layer, key);
    return binding === undefined ? [] : [{ layer: layer.name, words: bindingWords(keymap, binding) }];
  });
  return { key, name: keyName(board, key), bindings };
}
