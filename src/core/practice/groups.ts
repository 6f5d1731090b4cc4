import { type Need, parseNeed } from '../keymap/need.ts';

/** Needs that are learnt alike, each group with a curve of its own. */
export const NEED_GROUPS = ['letters', 'digits', 'symbols', 'keys', 'shortcuts'] as const;

export type NeedGroup = (typeof NEED_GROUPS)[number];

/** The group of a need: letters of any script with the space, decimal digits, other characters, keys, shortcuts. */
export function groupOf(need: Need): NeedGroup {
  if (need.kind === 'shortcut') return 'shortcuts';
  if (need.kind === 'key') return 'keys';
  if (need.char === ' ' || /^\p{L}/u.test(need.char)) return 'letters';
  return /^\p{Nd}/u.test(need.char) ? 'digits' : 'symbols';
}

const groups = new Map<string, NeedGroup | null>();

/** The group of a need as a keymap writes it; null for what is none. */
export function groupOfText(text: string): NeedGroup | null {
  const known = groups.get(text);
  if (known !== undefined) return known;
  const need = parseNeed(text);
  const group = need.ok ? groupOf(need.value) : null;
  groups.set(text, group);
  return group;
}
