import { isModifier } from '../../../core/keymap/codes.ts';
import { isOneCharacter } from '../../../core/keymap/need.ts';
import type { Action, Keymap, ShiftedAction } from '../../../core/keymap/types.ts';

/** The kind of an action, as it is chosen on a card. */
export type ActionKind = Action['do'];

/** The kinds in the order in which they are offered, in words. */
export const ACTION_KINDS: readonly { readonly value: ActionKind; readonly label: string }[] = [
  { value: 'char', label: 'a character' },
  { value: 'key', label: 'a key' },
  { value: 'text', label: 'a text' },
  { value: 'layer', label: 'a layer' },
  { value: 'modifier', label: 'a modifier that stays on' },
  { value: 'word-shift', label: 'Shift for one word' },
  { value: 'repeat', label: 'the last output again' },
  { value: 'nothing', label: 'nothing, on purpose' },
  { value: 'board', label: 'a function of the board' },
];

/**
 * The action that choosing a kind makes at once; null where something must be said first: which character, which
 * key, what text. A layer is the lowest above the base.
 */
export function startOf(kind: ActionKind, keymap: Keymap, side: 'tap' | 'hold'): Action | null {
  if (kind === 'nothing' || kind === 'repeat' || kind === 'word-shift') return { do: kind };
  if (kind === 'modifier') return { do: 'modifier', code: 'ShiftLeft', mode: 'latch' };
  const layer = keymap.layers[1]?.id;
  if (kind !== 'layer' || layer === undefined) return null;
  return { do: 'layer', layer, mode: side === 'hold' ? 'while-held' : 'latch' };
}

/** The kinds that may come in place of a tap while Shift is on. */
export const SHIFTED_KINDS = ACTION_KINDS.filter(({ value }) =>
  (['char', 'key', 'text', 'nothing'] as readonly ActionKind[]).includes(value),
);

/** An action as one that may come under Shift; null for one that may not. */
export function asShifted(action: Action): ShiftedAction | null {
  switch (action.do) {
    case 'char':
    case 'text':
    case 'nothing':
      return action;
    case 'key':
      return isModifier(action.code) ? null : action;
    default:
      return null;
  }
}

/** A character as it is kept; null where a text is none. */
export function readChar(text: string): string | null {
  const char = text.normalize('NFC');
  return isOneCharacter(char) ? char : null;
}

/** What is wrong with a text action's text, in a sentence. */
export function textProblem(text: string): string | undefined {
  const length = [...text].length;
  if (length === 0) return 'Write what the key types.';
  return length > 64 ? 'A text has 64 characters at most.' : undefined;
}

/** What is wrong with the name of a function of the board, in a sentence. */
export function labelProblem(label: string): string | undefined {
  const length = [...label].length;
  if (length === 0) return 'Give the function a name.';
  return length > 40 ? 'The name has 40 characters at most.' : undefined;
}
