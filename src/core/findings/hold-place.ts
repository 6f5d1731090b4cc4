import { keyName } from '../board/key-name.ts';
import { layerWords } from '../keymap/action-words.ts';
import { isModifier } from '../keymap/codes.ts';
import type { Action, BoardKey } from '../keymap/types.ts';
import type { Facts } from './facts.ts';
import type { Mend } from './find.ts';
import { firstHarmless } from './harmless.ts';
import { bindingAt, has } from './layer-grid.ts';
import { isLetter } from './letters.ts';
import { usedWhileOn } from './used-on-layer.ts';

/** A key of the base layer that has room for something held, and on which side. */
interface HoldPlace {
  readonly key: BoardKey;
  readonly side: 'tap' | 'hold';
}

/**
 * Where the base layer has room for something that is held: a free key, thumb keys first, else a thumb key that only
 * types, no letter, whose hold it becomes. Keys of chords are left alone, and those for which `mayUse` says no.
 */
export function holdPlace(
  facts: Facts,
  mayUse: (key: number) => boolean,
  thumbsOnly: boolean,
): HoldPlace | null {
  const inChords = new Set(facts.chords.flatMap((chord) => chord.keys));
  const keys = facts.keymap.board.keys.flatMap((key, number) =>
    !inChords.has(number) && mayUse(number) ? [{ key, number }] : [],
  );
  const thumbs = keys.filter(({ key }) => key.finger === 'thumb');
  const others = thumbsOnly ? [] : keys.filter(({ key }) => key.finger !== 'thumb');
  const unbound = [...thumbs, ...others].filter(({ number }) => !has(facts.grid.bound[number] ?? 0, 0));
  const used = unbound.length === 0 ? [] : usedWhileOn(facts);
  const free = unbound.find(({ number }) => !has(used[number] ?? 0, 0));
  if (free !== undefined) return { key: free.key, side: 'tap' };
  const typing = thumbs.find(({ number }) => onlyTypes(facts, number));
  return typing === undefined ? null : { key: typing.key, side: 'hold' };
}

/** Letters are left alone: a hold on one goes off in quick typing. */
function onlyTypes({ grid, host }: Facts, key: number): boolean {
  const binding = bindingAt(grid, key, 0);
  if (binding?.tap === undefined || binding.hold !== undefined || isLetter(host, binding.tap)) return false;
  return binding.tap.do === 'char' || (binding.tap.do === 'key' && !isModifier(binding.tap.code));
}

/** The mend that binds an action where `holdPlace` found room on the base layer. */
export function bindHeld({ keymap }: Facts, place: HoldPlace, action: Action, words: string): Mend {
  const layer = keymap.layers[0]?.id ?? '';
  const name = keyName(keymap.board, place.key.id);
  const how = place.side === 'hold' ? 'while it is held' : 'as the only thing it does';
  return {
    title: `Let ${name} give ${words} ${how}`,
    edits: [{ edit: 'bind', place: { layer, key: place.key.id }, side: place.side, action }],
  };
}

/**
 * The mend that lets a key of the base layer hold a layer nobody can enter; null where none has room, or where opening
 * the layer would open something that is wrong in its turn.
 */
export function enterMend(facts: Facts, layer: number): Mend | null {
  const { keymap, grid, chords } = facts;
  const id = keymap.layers[layer]?.id;
  if (id === undefined || layer === 0) return null;
  const liveHere = new Set(chords.filter((chord) => has(chord.live, layer)).flatMap((chord) => chord.keys));
  const place = holdPlace(facts, (key) => !has(grid.bound[key] ?? 0, layer) && !liveHere.has(key), false);
  if (place === null) return null;
  const action: Action = { do: 'layer', layer: id, mode: 'while-held' };
  return firstHarmless(facts, [bindHeld(facts, place, action, layerWords(keymap, id))]);
}
