import type { KeyEvent } from '../base/key-event.ts';

/** How a stream came to be. */
export type Made =
  | { readonly how: 'typed' }
  /**
   * By the typist model: words per minute, what a chord's spread is multiplied by, and the seed it was drawn with;
   * `measured` where the typist was one who had been measured, not those of a speed.
   */
  | {
      readonly how: 'written';
      readonly wpm: number;
      readonly spread: number;
      readonly seed: number;
      readonly measured?: true | undefined;
    };

/** A stream of presses on a board's keys with what is known of it; it holds no design, so any can be tried on it. */
export interface Stream {
  readonly name: string;
  readonly made: Made;
  /** The text that was to come out; null where nobody said. */
  readonly meant: string | null;
  readonly events: readonly KeyEvent[];
}

/** What a stream may hold at most. Reading refuses more, with a sentence. */
export const STREAM_LIMITS = {
  fileBytes: 16 * 1024 * 1024,
  events: 100_000,
  nameLength: 80,
  meantLength: 20_000,
  /** A day, ms. */
  latestMs: 86_400_000,
} as const;

/** The events begun at 0 ms, to a tenth of a millisecond: finer than any clock that a browser gives. */
export function fromZero(events: readonly KeyEvent[]): readonly KeyEvent[] {
  const start = events[0]?.t ?? 0;
  return events.map((event) => ({ ...event, t: Math.round((event.t - start) * 10) / 10 }));
}
