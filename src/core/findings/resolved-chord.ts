import { chordsOf } from '../keymap/timing.ts';
import type { BoardKey, Chord, Keymap } from '../keymap/types.ts';
import { has, keyAt, type LayerGrid, type LayerSet } from './layer-grid.ts';

/** A chord with what it names looked up. */
export interface ResolvedChord {
  readonly chord: Chord;
  /** Its place in the document: the earlier of two with the same keys fires (rule G3). */
  readonly order: number;
  readonly name: string;
  /** The numbers of its keys on the board, ascending; keys that the board lacks are left out. */
  readonly keys: readonly number[];
  readonly boardKeys: readonly BoardKey[];
  /** The layers on which it is live. */
  readonly live: LayerSet;
  readonly quietBeforeMs: number;
  /** Whether every key that it names is on the board. */
  readonly whole: boolean;
}

/** Looks up the keys and layers of every chord, in document order. */
export function resolveChords(keymap: Keymap, grid: LayerGrid): readonly ResolvedChord[] {
  return chordsOf(keymap).map((chord, order) => {
    const keys = numbersOf(chord, grid);
    return {
      chord,
      order,
      name: chord.name ?? chord.id,
      keys,
      boardKeys: keys.flatMap((key) => keyAt(grid, key) ?? []),
      live: liveLayers(chord, grid),
      quietBeforeMs: chord.quietBeforeMs ?? 0,
      whole: keys.length === chord.keys.length,
    };
  });
}

function numbersOf(chord: Chord, grid: LayerGrid): readonly number[] {
  const numbers = new Set(chord.keys.flatMap((id) => grid.keyNumber.get(id) ?? []));
  return [...numbers].sort((one, other) => one - other);
}

function liveLayers(chord: Chord, grid: LayerGrid): LayerSet {
  const ids = chord.layers ?? [...grid.layerNumber.keys()];
  return ids.reduce((live, id) => {
    const number = grid.layerNumber.get(id);
    return number === undefined ? live : live | (1 << number);
  }, 0);
}

/** Whether two chords have exactly the same keys. */
export function sameKeys(one: ResolvedChord, other: ResolvedChord): boolean {
  return one.keys.length === other.keys.length && one.keys.every((key, index) => key === other.keys[index]);
}

/**
 * Whether an earlier chord with the same keys takes every press of a later one where both are live: it does unless it
 * asks for more quiet before, or gives the keys a shorter window.
 */
export function alwaysTakes(earlier: ResolvedChord, later: ResolvedChord): boolean {
  return (
    earlier.order < later.order &&
    sameKeys(earlier, later) &&
    earlier.quietBeforeMs <= later.quietBeforeMs &&
    earlier.chord.windowMs >= later.chord.windowMs
  );
}

/**
 * Whether some presses, each timed as it needs, make a chord fire with `top` the highest layer that is on: it must be
 * live there, and no earlier live chord may always take it.
 */
export function mayFireOn(chord: ResolvedChord, top: number, all: readonly ResolvedChord[]): boolean {
  if (!chord.whole || chord.keys.length < 2 || !has(chord.live, top)) return false;
  return !all.some((other) => has(other.live, top) && alwaysTakes(other, chord));
}
