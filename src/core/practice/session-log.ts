import type { KeyId } from '../keymap/types.ts';
import type { Diagnosis } from './fault.ts';

/** One need asked for once. */
export interface Attempt {
  /** The need as a keymap writes it. */
  readonly need: string;
  /** When it was done, ms since 1970. */
  readonly at: number;
  /** Whether the first thing given was the need. */
  readonly right: boolean;
  /** From what was given before it, or from the prompt where it stands alone; null where reading or an error is in it. */
  readonly ms: number | null;
  /** A hint was on the board. */
  readonly hinted: boolean;
  /** What it went wrong by; null for a right one. */
  readonly diagnosis: Diagnosis | null;
}

/** How a need was typed when it was practised. */
export interface KnownRoute {
  /** The presses that matter, see `signatureOf`. */
  readonly signature: string;
  /** The same in words, in the order of the hands. */
  readonly words: string;
  /** The keys that type, to tell a press at the old place. */
  readonly keys: readonly KeyId[];
}

/** What a session leaves behind, in order of time. */
export interface SessionLog {
  readonly startedAt: number;
  /** Time with a prompt on the page, ms. */
  readonly activeMs: number;
  readonly attempts: readonly Attempt[];
  /** By need: how the design had it then. */
  readonly routes: Readonly<Record<string, KnownRoute>>;
}
