import type { KeyValue } from '../key-value.ts';

/**
 * What is done where the backup holds another value under a name than this browser:
 * both: the backup's is kept too, under another name; union: both are made into one by `combine`; choose: the typist says;
 * here: what is here stays.
 */
export type MeetingRule =
  | {
      readonly rule: 'both';
      renamed(name: string, newId: string): string;
      copied?(value: unknown, taken: readonly string[]): unknown;
    }
  | { readonly rule: 'union'; combine(here: unknown, backup: unknown): unknown }
  | { readonly rule: 'choose' }
  | { readonly rule: 'here' };

/** Something that the browser keeps and a backup holds. */
export interface BackupPart {
  /** Its name in the file; never changes. */
  readonly id: string;
  /** What it is called on screen, in the plural or as a mass: "designs", "your settings". */
  readonly title: string;
  readonly values: KeyValue;
  /** Which names belong in a backup; all without it. */
  readonly holds?: (name: string) => boolean;
  /** Whether a value that came with a file is one of this part; what is not is left out, and told. */
  readonly isValid?: (value: unknown) => boolean;
  /** What a value is called, for parts whose values have names of their own. */
  readonly nameOf?: (value: unknown) => string;
  readonly meeting: MeetingRule;
  /** Left out of a backup that would otherwise be too large to be read again. */
  readonly isSpared?: boolean;
}
