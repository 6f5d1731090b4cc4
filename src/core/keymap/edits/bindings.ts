import { castDraft, produce } from 'immer';
import { actionWords, bindingWords, layerWords } from '../action-words.ts';
import { bindingAt } from '../lookup.ts';
import type { Binding, Keymap, Place, Side } from '../types.ts';
import {
  type Edited,
  type EditNamed,
  made,
  missingLayer,
  missingPlace,
  type NameKey,
  placeWords,
  refused,
} from './outcome.ts';

/** Puts a binding at a place that exists, or takes away what is there. */
function withBinding(keymap: Keymap, place: Place, binding: Binding | undefined): Keymap {
  return produce(keymap, (draft) => {
    const layer = draft.layers.find(({ id }) => id === place.layer);
    if (!layer) return;
    if (binding) layer.places[place.key] = castDraft(binding);
    else delete layer.places[place.key];
  });
}

function noBinding(keymap: Keymap, place: Place, nameKey: NameKey): Edited {
  return refused(`Nothing is bound at ${placeWords(keymap, place, nameKey)}.`);
}

function replaced(keymap: Keymap, place: Place, what: string | undefined, nameKey: NameKey): string[] {
  return what === undefined ? [] : [`Replaced ${what} at ${placeWords(keymap, place, nameKey)}.`];
}

/** Sets the tap or the hold of a place; the other side and the timing stay. */
export function bind(keymap: Keymap, { place, side, action }: EditNamed<'bind'>, nameKey: NameKey): Edited {
  const missing = missingPlace(keymap, place);
  if (missing !== undefined) return refused(missing);
  const before = bindingAt(keymap, place);
  const previous = before?.[side];
  const next = withBinding(keymap, place, { ...before, [side]: action });
  const title = `Bind ${actionWords(keymap, action)} on ${layerWords(keymap, place.layer)}`;
  const what = previous && actionWords(keymap, previous);
  return made(next, side === 'hold' ? `${title}, hold` : title, replaced(keymap, place, what, nameKey));
}

/** Sets what comes in place of a tap while Shift is on, or takes it away. */
export function setOnShift(
  keymap: Keymap,
  { place, action }: EditNamed<'set-on-shift'>,
  nameKey: NameKey,
): Edited {
  const before = bindingAt(keymap, place);
  if (!before) return missingAs(keymap, place, nameKey);
  const where = placeWords(keymap, place, nameKey);
  if (action === null) {
    const { onShift: gone, ...left } = before;
    if (!gone) return refused(`There is nothing of its own under Shift at ${where}.`);
    return made(
      withBinding(keymap, place, left),
      `Take ${actionWords(keymap, gone)} off ${where} under Shift`,
    );
  }
  if (!before.tap) return refused(`There is no tap at ${where}, in whose place it would come.`);
  const what = before.onShift && `${actionWords(keymap, before.onShift)} under Shift`;
  const next = withBinding(keymap, place, { ...before, onShift: action });
  const title = `Bind ${actionWords(keymap, action)} on ${layerWords(keymap, place.layer)} under Shift`;
  return made(next, title, replaced(keymap, place, what, nameKey));
}

/** Takes a binding away, or one side of it; a binding that is left with neither side goes. */
export function unbind(keymap: Keymap, { place, side }: EditNamed<'unbind'>, nameKey: NameKey): Edited {
  const before = bindingAt(keymap, place);
  if (!before) return missingAs(keymap, place, nameKey);
  if (side === undefined) {
    return made(withBinding(keymap, place, undefined), `Clear ${placeWords(keymap, place, nameKey)}`);
  }
  const action = before[side];
  if (!action) return refused(`There is no ${side} at ${placeWords(keymap, place, nameKey)}.`);
  const left = without(before, side);
  const title = `Take ${actionWords(keymap, action)} off ${placeWords(keymap, place, nameKey)}`;
  const { onShift } = before;
  const along =
    left && onShift && !left.onShift ? [`Took away ${actionWords(keymap, onShift)} under Shift.`] : [];
  return made(withBinding(keymap, place, left), title, along);
}

function without(binding: Binding, side: Side): Binding | undefined {
  if (!binding.tap || !binding.hold) return undefined;
  const left = { ...binding };
  delete left[side];
  if (side === 'tap') delete left.onShift;
  return left;
}

function missingAs(keymap: Keymap, place: Place, nameKey: NameKey): Edited {
  const missing = missingPlace(keymap, place);
  return missing === undefined ? noBinding(keymap, place, nameKey) : refused(missing);
}

/** Replaces a whole binding with its timing. */
export function setBinding(
  keymap: Keymap,
  { place, binding }: EditNamed<'set-binding'>,
  nameKey: NameKey,
): Edited {
  const missing = missingPlace(keymap, place);
  if (missing !== undefined) return refused(missing);
  if (!binding.tap && !binding.hold) return refused('A binding has a tap, a hold or both.');
  const before = bindingAt(keymap, place);
  const title = `Bind ${bindingWords(keymap, binding)} on ${layerWords(keymap, place.layer)}`;
  const what = before && bindingWords(keymap, before);
  return made(withBinding(keymap, place, binding), title, replaced(keymap, place, what, nameKey));
}

/** Moves a binding with its timing; what was bound at its new place goes, and is told. */
export function moveBinding(
  keymap: Keymap,
  { from, to }: EditNamed<'move-binding'>,
  nameKey: NameKey,
): Edited {
  const missing = missingPlace(keymap, from) ?? missingPlace(keymap, to);
  if (missing !== undefined) return refused(missing);
  if (samePlace(from, to)) return refused(`It is already at ${placeWords(keymap, to, nameKey)}.`);
  const binding = bindingAt(keymap, from);
  if (!binding) return noBinding(keymap, from, nameKey);
  const before = bindingAt(keymap, to);
  const next = withBinding(withBinding(keymap, from, undefined), to, binding);
  const title = `Move ${bindingWords(keymap, binding)} to ${placeWords(keymap, to, nameKey)}`;
  return made(next, title, replaced(keymap, to, before && bindingWords(keymap, before), nameKey));
}

/** Exchanges two bindings with their timing; one of the places may be empty. */
export function swapBindings(
  keymap: Keymap,
  { one, other }: EditNamed<'swap-bindings'>,
  nameKey: NameKey,
): Edited {
  const missing = missingPlace(keymap, one) ?? missingPlace(keymap, other);
  if (missing !== undefined) return refused(missing);
  if (samePlace(one, other)) return refused('A binding cannot be swapped with itself.');
  const first = bindingAt(keymap, one);
  const second = bindingAt(keymap, other);
  if (!first && !second) return noBinding(keymap, one, nameKey);
  const next = withBinding(withBinding(keymap, one, second), other, first);
  return made(next, `Swap ${placeWords(keymap, one, nameKey)} with ${placeWords(keymap, other, nameKey)}`);
}

function samePlace(one: Place, other: Place): boolean {
  return one.layer === other.layer && one.key === other.key;
}

/** Sets the taps of many keys of a layer at once; their holds, and keys that are not named, stay as they are. */
export function fillLayer(keymap: Keymap, { layer, taps }: EditNamed<'fill-layer'>): Edited {
  const wanted = Object.entries(taps);
  const missing =
    missingLayer(keymap, layer) ??
    wanted.map(([key]) => missingPlace(keymap, { layer, key })).find((sentence) => sentence !== undefined);
  if (missing !== undefined) return refused(missing);
  const had = wanted.filter(([key]) => bindingAt(keymap, { layer, key })?.tap).length;
  const next = wanted.reduce(
    (map, [key, tap]) => withBinding(map, { layer, key }, { ...bindingAt(map, { layer, key }), tap }),
    keymap,
  );
  const name = layerWords(keymap, layer);
  const alongside = had === 0 ? [] : [`Replaced ${had === 1 ? 'one tap' : `${had} taps`} on ${name}.`];
  return made(next, `Fill ${name}`, alongside);
}
