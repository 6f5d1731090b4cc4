import type { Code, Modifier } from '../keymap/codes.ts';

/** One key with the modifiers that are down around it. */
export interface Stroke {
  readonly code: Code;
  /** Modifiers in the order in which they are pressed. */
  readonly with: readonly Modifier[];
}

/** What the computer makes of one key at one level: a character, a dead key (by its XKB name), or nothing. */
export type HostOutput =
  | { readonly kind: 'char'; readonly char: string }
  | { readonly kind: 'dead'; readonly dead: string }
  | { readonly kind: 'none' };

/** Which modifiers that choose a character are down (Control, Alt where it is no level 3, and Meta make none). */
export interface Level {
  readonly shift: boolean;
  readonly level3: boolean;
  readonly caps: boolean;
}

/** How a computer reads the keys. Built once from a compact table; pure and immutable. */
export interface HostLayout {
  /** XKB names of layout and variant. */
  readonly layout: string;
  readonly variant: string;
  /** The modifier that chooses level 3 (AltRight), or null where the layout has none and AltRight is a plain Alt. */
  readonly level3: Modifier | null;
  /** What a key gives at a level. */
  outputOf(code: Code, level: Level): HostOutput;
  /** What a dead key makes of the character typed next; undefined where the pair composes to nothing. */
  compose(dead: readonly string[], next: string): string | undefined;
  /**
   * All stroke sequences that type a character with Caps off, fewest strokes first; then those on keys that every board
   * has before those on IntlBackslash, IntlRo, IntlYen and the number pad; then fewest modifiers; then in
   * the order of `TYPING_CODES`. Empty where the layout has no way to type it. Shift is written as ShiftLeft; either
   * serves. No stroke holds a modifier that changes nothing. "\n" is Enter, "\t" is Tab.
   */
  routesOf(char: string): readonly (readonly Stroke[])[];
}
