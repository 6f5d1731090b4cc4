import type { HostLayout } from '../host/host-layout.ts';
import type { Modifier } from '../keymap/codes.ts';
import type { ModifierName, Need } from '../keymap/need.ts';
import type { Action } from '../keymap/types.ts';

const LEFT_SIDE: Readonly<Record<ModifierName, Modifier>> = {
  Control: 'ControlLeft',
  Shift: 'ShiftLeft',
  Alt: 'AltLeft',
  Meta: 'MetaLeft',
};

/**
 * The action that gives a need by itself: a key where one key without modifiers does it, else a character, or a key
 * with its modifiers (the left ones). Null for a character that the host layout has no way to type.
 */
export function actionForNeed(host: HostLayout, need: Need): Action | null {
  if (need.kind === 'key') return { do: 'key', code: need.code };
  if (need.kind === 'shortcut') {
    return { do: 'key', code: need.code, with: need.modifiers.map((name) => LEFT_SIDE[name]) };
  }
  const [strokes] = host.routesOf(need.char);
  if (strokes === undefined) return null;
  const [only, ...more] = strokes;
  if (only !== undefined && more.length === 0 && only.with.length === 0)
    return { do: 'key', code: only.code };
  return { do: 'char', char: need.char };
}
