import { keyName } from '../board/key-name.ts';
import { layerWords } from '../keymap/action-words.ts';
import { isModifier } from '../keymap/codes.ts';
import type { Action, Binding, Keymap, Place } from '../keymap/types.ts';
import type { Facts } from './facts.ts';
import type { EntryPoint } from './layer-entry-points.ts';
import { bindingAt, effectiveLayer, has, keyAt, type LayerSet } from './layer-grid.ts';
import { isDown, type LayerState, stateOf } from './layer-state.ts';
import { usedWhileOn } from './used-on-layer.ts';

/**
 * Places that a mend may bind: empty, reached, needed by no route as they are, and not covering a key that holds a
 * layer or modifier. Base layer first, then each layer that one key of the base layer holds; home keys before others.
 */
export function freePlaces(facts: Facts): readonly Place[] {
  const used = usedWhileOn(facts);
  const rest = stateOf(facts.grid, [], 0, 0);
  const onBase = freeOn(facts, rest, 0, used);
  const held = facts.keymap.layers.flatMap((_, layer) => {
    const entry = facts.reach.entries.find((each) => each.target === layer && isHeldFromBase(each));
    if (entry === undefined) return [];
    const state = stateOf(facts.grid, [entry], 0, 0);
    return freeOn(facts, state, layer, used).filter((place) => !sharesFinger(facts, entry, place));
  });
  return [...onBase, ...held];
}

function isHeldFromBase(entry: EntryPoint): boolean {
  return entry.mode === 'while-held' && entry.layer === 0 && entry.steady;
}

/**
 * The empty places of one layer that would take effect in a state in which it is on, home keys first; `used` as
 * `usedWhileOn` gives it.
 */
export function freeOn(
  facts: Facts,
  state: LayerState,
  layer: number,
  used: readonly LayerSet[],
): readonly Place[] {
  const { keymap, grid } = facts;
  const id = keymap.layers[layer]?.id ?? '';
  const free = keymap.board.keys.filter((_, key) => {
    if (has(grid.bound[key] ?? 0, layer) || isDown(state, key) || has(used[key] ?? 0, layer)) return false;
    const below = effectiveLayer(grid, key, state.on);
    return below < layer && !opensSomething(bindingAt(grid, key, below));
  });
  const homeFirst = [...free.filter((key) => key.home), ...free.filter((key) => !key.home)];
  return homeFirst.map((key) => ({ layer: id, key: key.id }));
}

/** Whether a binding holds or turns on a layer or a modifier: such a key is left alone. */
export function opensSomething(binding: Binding | undefined): boolean {
  return isOpening(binding?.tap) || isOpening(binding?.hold);
}

function isOpening(action: Action | undefined): boolean {
  if (action === undefined) return false;
  return (
    action.do === 'layer' || action.do === 'modifier' || (action.do === 'key' && isModifier(action.code))
  );
}

function sharesFinger({ grid }: Facts, entry: EntryPoint, place: Place): boolean {
  const pressing = keyAt(grid, grid.keyNumber.get(place.key) ?? -1);
  return entry.keys.some((number) => {
    const holding = keyAt(grid, number);
    return holding?.hand === pressing?.hand && holding?.finger === pressing?.finger;
  });
}

/** A place in words: "right ring home on Symbols". */
export function placeInWords(keymap: Keymap, place: Place): string {
  return `${keyName(keymap.board, place.key)} on ${layerWords(keymap, place.layer)}`;
}
