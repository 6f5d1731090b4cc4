import { type Draft, produce } from 'immer';
import type { TimingChange } from '../edit.ts';
import { bindingAt } from '../lookup.ts';
import type { Keymap, Timing } from '../types.ts';
import {
  type Edited,
  type EditNamed,
  made,
  missingPlace,
  type NameKey,
  placeWords,
  refused,
} from './outcome.ts';

function setField<Field extends keyof Timing>(
  target: Draft<Timing>,
  field: Field,
  value: Draft<Timing>[Field] | null | undefined,
): void {
  if (value === null) delete target[field];
  else if (value !== undefined) target[field] = value;
}

/** Fields that the change leaves out stay; a field set to null goes, so that the next wider one holds. */
function change(target: Draft<Timing>, to: TimingChange): void {
  setField(target, 'holdAfterMs', to.holdAfterMs);
  setField(target, 'holdBy', to.holdBy);
  setField(target, 'quietBeforeMs', to.quietBeforeMs);
  setField(target, 'againWithinMs', to.againWithinMs);
  setField(target, 'sameHandTaps', to.sameHandTaps);
  setField(target, 'tapIfAlone', to.tapIfAlone);
}

/** Sets or takes away timing fields of one binding. */
export function setBindingTiming(
  keymap: Keymap,
  edit: EditNamed<'set-binding-timing'>,
  nameKey: NameKey,
): Edited {
  const { place, timing } = edit;
  if (!bindingAt(keymap, place)) {
    return refused(
      missingPlace(keymap, place) ?? `Nothing is bound at ${placeWords(keymap, place, nameKey)}.`,
    );
  }
  const next = produce(keymap, (draft) => {
    const binding = draft.layers.find(({ id }) => id === place.layer)?.places[place.key];
    if (binding) change(binding, timing);
  });
  return made(next, `Set the timing of ${placeWords(keymap, place, nameKey)}`);
}

/** Sets or takes away timing fields of the whole design; with none left the field `timing` goes. */
export function setTiming(keymap: Keymap, edit: EditNamed<'set-timing'>): Edited {
  const next = produce(keymap, (draft) => {
    const timing = draft.timing ?? {};
    change(timing, edit.timing);
    if (Object.keys(timing).length === 0) delete draft.timing;
    else draft.timing = timing;
  });
  return made(next, 'Set the timing of the design');
}
