import { chiSquaredQuantile, type Estimate } from './fit-estimate.ts';
import type { MeasuredChord } from './measured.ts';
import { ONSET_SD_MS } from './parameters.ts';

/** Fewer degrees of freedom than this, and nothing is said of the spread. */
const LEAST_DEGREES = 4;

/**
 * How much wider a person's chords spread than those of skilled hands. Each onset is normal about the chord's own middle, with
 * the SD of `ONSET_SD_MS` times the factor; so squares about the mean, over that SD, are chi squared with one degree
 * of freedom less than the chord has keys, and the interval is exact for the model. Null for too few chords.
 */
export function fitSpread(chords: readonly MeasuredChord[]): Estimate | null {
  let squares = 0;
  let degrees = 0;
  for (const { hands, onsetsMs } of chords) {
    const mean = onsetsMs.reduce((sum, each) => sum + each, 0) / onsetsMs.length;
    const sd = hands === 'one' ? ONSET_SD_MS.oneHand : ONSET_SD_MS.twoHands;
    for (const onset of onsetsMs) squares += ((onset - mean) / sd) ** 2;
    degrees += onsetsMs.length - 1;
  }
  if (degrees < LEAST_DEGREES || squares === 0) return null;
  return {
    value: Math.sqrt(squares / degrees),
    low: Math.sqrt(squares / chiSquaredQuantile(0.975, degrees)),
    high: Math.sqrt(squares / chiSquaredQuantile(0.025, degrees)),
    count: chords.length,
  };
}
