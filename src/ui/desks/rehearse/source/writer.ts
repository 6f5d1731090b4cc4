import type { Made } from '../../../../core/rehearse/stream.ts';
import { type Person, personAt } from '../../../../core/typist/person.ts';

/** Whose times a written text gets: typists of a chosen speed, or the one who was measured here. */
export type Who = 'speed' | 'measured';

/** What is chosen about whoever writes. */
export interface WriterChoices {
  /** Null until somebody chooses: then the measured typist where there is one. */
  readonly who: Who | null;
  /** Words a minute of the chosen speed. */
  readonly wpm: number;
  /** What a chord's spread is multiplied by, at a chosen speed. */
  readonly spread: number;
}

/** Whoever writes, and how a stream of theirs says so. */
export interface Writer {
  readonly who: Who;
  readonly person: Person;
  readonly name: string;
  made(seed: number): Made;
}

/** The writer that the choices come to; without a measured typist it is always the chosen speed. */
export function writerOf({ who, wpm, spread }: WriterChoices, measured: Person | null): Writer {
  if (measured === null || who === 'speed') {
    const name = `Written at ${wpm} words a minute`;
    return {
      who: 'speed',
      person: personAt(wpm, spread),
      name,
      made: (seed) => ({ how: 'written', wpm, spread, seed }),
    };
  }
  // As a file of a stream takes them; people are never so far off, but a clock may be.
  const own = {
    wpm: Math.round(Math.min(400, Math.max(1, measured.parameters.wpm))),
    spread: Math.round(100 * Math.min(10, Math.max(0.1, measured.spreadFactor))) / 100,
  };
  return {
    who: 'measured',
    person: measured,
    name: 'Written as I was measured',
    made: (seed) => ({ how: 'written', ...own, seed, measured: true }),
  };
}
