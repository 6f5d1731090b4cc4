import { LIMITS } from '../keymap/limits.ts';
import type { Need } from '../keymap/need.ts';
import type { TextCounts } from './text-counts.ts';

/** The characters that are typed with a key of their own name. */
const KEY_CHARACTERS = [
  ['\n', 'Enter'],
  ['\t', 'Tab'],
] as const;

/** The need that a character of a text is: the key Enter for a line break, Tab for a tab, else the character. */
export function needOfCharacter(char: string): Need {
  const code = KEY_CHARACTERS.find(([known]) => known === char)?.[1];
  return code === undefined ? { kind: 'char', char } : { kind: 'key', code };
}

/** The character of a text that a need stands for, null where it is none. */
export function characterOfNeed(need: Need): string | null {
  if (need.kind === 'char') return need.char;
  if (need.kind === 'shortcut') return null;
  return KEY_CHARACTERS.find(([, code]) => code === need.code)?.[0] ?? null;
}

/** How often a need stands in a text; shortcuts, and keys other than Enter and Tab, never do. */
export function countOfNeed(counts: TextCounts, need: Need): number {
  const char = characterOfNeed(need);
  return char === null ? 0 : (counts.chars.get(char) ?? 0);
}

/**
 * The characters of a text as needs: the most frequent first, of equal ones in code unit order. No more than a design
 * can hold; what a text has beyond that is as rare as it can be.
 */
export function needsOfText(counts: TextCounts): readonly Need[] {
  return [...counts.chars]
    .sort(([one, many], [other, more]) => more - many || (one < other ? -1 : 1))
    .slice(0, LIMITS.needs)
    .map(([char]) => needOfCharacter(char));
}
