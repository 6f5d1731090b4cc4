import { produce } from 'immer';
import { actionsOf } from './actions-of.ts';
import type { Keymap } from './types.ts';

/** The keymap with the characters of its `char` actions in NFC; the same object where they are already. */
export function withCharsInNfc(keymap: Keymap): Keymap {
  const composed = actionsOf(keymap).every(
    ({ action }) => action.do !== 'char' || action.char === action.char.normalize('NFC'),
  );
  if (composed) return keymap;
  return produce(keymap, (draft) => {
    const bindings = draft.layers.flatMap(({ places }) => Object.values(places));
    const actions = [
      ...bindings.flatMap(({ tap, hold }) => [tap, hold]),
      ...(draft.chords ?? []).map(({ action }) => action),
    ];
    for (const action of actions) {
      if (action?.do === 'char') action.char = action.char.normalize('NFC');
    }
  });
}
