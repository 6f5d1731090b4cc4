import { onsetSdMs, spreadWithin } from '../typist/spread.ts';
import type { AccidentFacts } from './accident-facts.ts';
import { SHORTEST_VALIDATED_MS } from './chord-spread.ts';
import type { ResolvedChord } from './resolved-chord.ts';

const LONGEST_MS = 400;

/** The share of this typist's chords, percent, whose keys come within a window. */
export function caughtBy({ situation }: AccidentFacts, chord: ResolvedChord, windowMs: number): number {
  const seats = chord.keys.flatMap((key) => situation.runs.seats[key] ?? []);
  const sd = onsetSdMs(seats, situation.model.person.spreadFactor);
  return 100 * spreadWithin(windowMs, chord.keys.length, sd);
}

/** The shortest window in steps of 5 ms, 25 ms or more, that catches a share of this typist's chords, percent. */
export function windowThatCatches(accidents: AccidentFacts, chord: ResolvedChord, percent: number): number {
  let windowMs = SHORTEST_VALIDATED_MS;
  while (windowMs < LONGEST_MS && caughtBy(accidents, chord, windowMs) < percent) windowMs += 5;
  return windowMs;
}

/** The shortest window, ms, of which this typist misses no more than the limit allows. */
export function shortestForSpread(accidents: AccidentFacts, chord: ResolvedChord): number {
  return windowThatCatches(accidents, chord, 100 - accidents.limits.missedPercent);
}
