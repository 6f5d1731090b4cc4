import { produce } from 'immer';
import { actionsOf } from './actions-of.ts';
import type { Keymap } from './types.ts';

/**
 * The keymap with the characters of its `char` actions and of its hosts' corrections in NFC; the same object where
 * they are already.
 */
export function withCharsInNfc(keymap: Keymap): Keymap {
  const actions = actionsOf(keymap).flatMap(({ action }) => (action.do === 'char' ? [action.char] : []));
  const corrected = keymap.hosts.flatMap(({ corrections = [] }) => corrections.map(({ gives }) => gives));
  if ([...actions, ...corrected].every((char) => char === char.normalize('NFC'))) return keymap;
  return produce(keymap, (draft) => {
    const bindings = draft.layers.flatMap(({ places }) => Object.values(places));
    const actions = [
      ...bindings.flatMap(({ tap, onShift, hold }) => [tap, onShift, hold]),
      ...(draft.chords ?? []).flatMap(({ action, onShift, hold }) => [action, onShift, hold]),
    ];
    for (const action of actions) {
      if (action?.do === 'char') action.char = action.char.normalize('NFC');
    }
    for (const correction of draft.hosts.flatMap(({ corrections = [] }) => corrections)) {
      correction.gives = correction.gives.normalize('NFC');
    }
  });
}
