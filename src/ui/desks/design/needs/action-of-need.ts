import type { Modifier } from '../../../../core/keymap/codes.ts';
import type { ModifierName, Need } from '../../../../core/keymap/need.ts';
import type { Action } from '../../../../core/keymap/types.ts';

const LEFT: Readonly<Record<ModifierName, Modifier>> = {
  Control: 'ControlLeft',
  Shift: 'ShiftLeft',
  Alt: 'AltLeft',
  Meta: 'MetaLeft',
};

/** The action that types a need by itself: a character as a character, a key as a key, a shortcut with its left-hand modifiers. */
export function actionOfNeed(need: Need): Action {
  if (need.kind === 'char') return { do: 'char', char: need.char };
  if (need.kind === 'key') return { do: 'key', code: need.code };
  return { do: 'key', code: need.code, with: need.modifiers.map((name) => LEFT[name]) };
}
