import { execFileSync } from 'node:child_process';
import { KEY_NUMBERS } from '../../core/host/key-codes.ts';
import { TYPING_CODES } from '../../core/host/typing-codes.ts';
import type { Code } from '../../core/keymap/codes.ts';

/** Rows like `48       AC11      1        German               1       [ Shift Mod5 ]`. The key code is evdev + 8. */
const ROW = /^(\d+)\s.*\[ ?([^\]]*?) ?\]$/;

/** Names that XKB's rules give the modifiers that choose a level; a row with any other is not reached by typing. */
const LEVEL_MODIFIERS: ReadonlySet<string> = new Set(['Shift', 'Mod5']);

/** The number pad is left out: its signs are keysyms of their own, and its digits hang on Num Lock. */
const CODE_OF: ReadonlyMap<number, Code> = new Map(
  TYPING_CODES.filter((code) => !code.startsWith('Numpad')).flatMap((code) => {
    const { evdev } = KEY_NUMBERS[code];
    return evdev === null ? [] : [[evdev + 8, code] as const];
  }),
);

/** A stroke as one word: "Shift+Mod5+KeyQ". */
function strokeWord(code: Code, modifiers: readonly string[]): string {
  return [...modifiers, code].join('+');
}

function rowStroke(line: string): { code: Code; modifiers: readonly string[] } | null {
  const [, keycode, names = ''] = ROW.exec(line) ?? [];
  const code = CODE_OF.get(Number(keycode));
  const modifiers = names.split(' ').filter((name) => name !== '');
  const isTyping = modifiers.every((name) => LEVEL_MODIFIERS.has(name));
  return code === undefined || !isTyping ? null : { code, modifiers };
}

/**
 * Asks by each of the names that a character may have: some layouts write "ellipsis", others U2026, and
 * libxkbcommon, asked for a code point, looks for one of them only.
 */
function questions(wanted: string): readonly (readonly string[])[] {
  if (wanted.startsWith('dead_')) return [['--keysym', wanted]];
  const point = (wanted.codePointAt(0) ?? 0).toString(16).toUpperCase();
  const byPoint = [`0x${point}`];
  return wanted < '\u0100' ? [byPoint] : [byPoint, ['--keysym', `U${point.padStart(4, '0')}`]];
}

/**
 * What libxkbcommon says to press for a character (or, by name, for a dead key), without Caps Lock, media keys and the
 * number pad. Of one key only strokes from which no modifier can be left out. Sorted.
 */
export function howToType(layout: string, variant: string, wanted: string): readonly string[] {
  const strokes = questions(wanted).flatMap((question) => {
    const args = ['how-to-type', '--layout', layout, '--variant', variant, ...question];
    const text = execFileSync('xkbcli', args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'ignore'] });
    return text.split('\n').flatMap((line) => rowStroke(line) ?? []);
  });
  const needed = strokes.filter(({ code, modifiers }) =>
    strokes.every(
      (other) =>
        other.code !== code ||
        other.modifiers.length >= modifiers.length ||
        !other.modifiers.every((name) => modifiers.includes(name)),
    ),
  );
  return [...new Set(needed.map(({ code, modifiers }) => strokeWord(code, modifiers)))].toSorted();
}
