import { fail, ok, type Result } from '../base/result.ts';
import { type Code, isCode } from './codes.ts';

/** A modifier of a shortcut; either side's key serves. */
export type ModifierName = 'Control' | 'Shift' | 'Alt' | 'Meta';

/** A character, key or shortcut that the typist must be able to type. */
export type Need =
  | { readonly kind: 'char'; readonly char: string }
  | { readonly kind: 'key'; readonly code: Code }
  | { readonly kind: 'shortcut'; readonly modifiers: readonly ModifierName[]; readonly code: Code };

const MODIFIER_NAMES: readonly ModifierName[] = ['Control', 'Shift', 'Alt', 'Meta'];
const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** Whether a text is exactly one grapheme cluster (Unicode Standard Annex 29). */
export function isOneCharacter(text: string): boolean {
  // Most are a single code unit, and every edit looks at every character of a design.
  if (text.length < 2) return text.length === 1;
  const clusters = segmenter.segment(text)[Symbol.iterator]();
  return clusters.next().done !== true && clusters.next().done === true;
}

/**
 * Reads a need as it is written in a keymap: the character itself, `key:CODE` or `shortcut:Control+Alt+CODE`.
 * The problem is a sentence that names what was found and what was expected.
 */
export function parseNeed(text: string): Result<Need, string> {
  if (text.startsWith('key:') && text.length > 4) return parseKeyNeed(text.slice(4));
  if (text.startsWith('shortcut:') && text.length > 9) return parseShortcutNeed(text.slice(9));
  const char = text.normalize('NFC');
  if (isOneCharacter(char)) return ok({ kind: 'char', char });
  return fail(`found ${JSON.stringify(text)}, expected one character, key:CODE or shortcut:Modifier+CODE`);
}

function parseKeyNeed(code: string): Result<Need, string> {
  if (isCode(code)) return ok({ kind: 'key', code });
  return fail(`found ${JSON.stringify(`key:${code}`)}, expected a W3C code after "key:"`);
}

function parseShortcutNeed(text: string): Result<Need, string> {
  const parts = text.split('+');
  const code = parts.pop() ?? '';
  if (!isCode(code)) {
    return fail(`found ${JSON.stringify(`shortcut:${text}`)}, expected it to end in a W3C code`);
  }
  const modifiers = MODIFIER_NAMES.filter((name) => parts.includes(name));
  if (parts.length === 0 || modifiers.length !== parts.length) {
    return fail(
      `found ${JSON.stringify(`shortcut:${text}`)}, expected one or more of Control, Shift, Alt and Meta, each once, before the code`,
    );
  }
  return ok({ kind: 'shortcut', modifiers, code });
}

/** Writes a need as it stands in a keymap; the inverse of `parseNeed`. */
export function needText(need: Need): string {
  if (need.kind === 'char') return need.char;
  if (need.kind === 'key') return `key:${need.code}`;
  return `shortcut:${[...need.modifiers, need.code].join('+')}`;
}
