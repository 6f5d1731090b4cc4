import { FINGERS, fingerDwellMs } from './dwells.ts';
import { type Estimate, studentT975 } from './fit-estimate.ts';
import type { MeasuredDwell } from './measured.ts';

/** What was fitted to how long keys were down. */
export interface FittedDwells {
  /** The person's mean, ms, were all fingers used alike: each dwell over what the sample's fingers differ by. */
  readonly meanMs: Estimate;
  /** SD within a finger, ms. */
  readonly withinMs: Estimate;
  /** Mean of each finger by `FingerNumber`, ms; null for fewer than `LEAST_OF_FINGER`. */
  readonly fingers: readonly (Estimate | null)[];
}

/** Fewer dwells of a finger than this say nothing: Student's t is only near enough from here on. */
export const LEAST_OF_FINGER = 5;

/**
 * Means with Student's t intervals (Student 1908), the SD with an interval by its asymptotic error, which needs no
 * particular distribution: Var(s²) ≈ (m4 − s⁴) / n. Null for too few dwells.
 */
export function fitDwells(dwells: readonly MeasuredDwell[]): FittedDwells | null {
  if (dwells.length < LEAST_OF_FINGER) return null;
  const byFinger = Array.from({ length: FINGERS }, (_, finger) =>
    dwells.filter((each) => each.finger === finger).map(({ ms }) => ms),
  );
  const meanMs = meanOf(dwells.map(({ finger, ms }) => ms / fingerDwellMs(finger, 1)));
  return {
    meanMs,
    withinMs: withinOf(byFinger),
    fingers: byFinger.map((times) => (times.length < LEAST_OF_FINGER ? null : meanOf(times))),
  };
}

function meanOf(times: readonly number[]): Estimate {
  const count = times.length;
  const value = times.reduce((sum, each) => sum + each, 0) / count;
  const squares = times.reduce((sum, each) => sum + (each - value) ** 2, 0);
  const reach = studentT975(count - 1) * Math.sqrt(squares / (count - 1) / count);
  return { value, low: Math.max(0, value - reach), high: value + reach, count };
}

function withinOf(fingers: readonly (readonly number[])[]): Estimate {
  const used = fingers.filter((times) => times.length > 0);
  const deviations = used.flatMap((times) => {
    const mean = times.reduce((sum, each) => sum + each, 0) / times.length;
    return times.map((each) => each - mean);
  });
  const count = deviations.length;
  const degrees = Math.max(1, count - used.length);
  const variance = deviations.reduce((sum, each) => sum + each ** 2, 0) / degrees;
  const fourth = deviations.reduce((sum, each) => sum + each ** 4, 0) / degrees;
  const value = Math.sqrt(variance);
  // On ln s: half the relative error of s².
  const lnError = variance === 0 ? 0 : Math.sqrt(Math.max(0, fourth - variance ** 2) / count) / variance / 2;
  const reach = studentT975(degrees) * lnError;
  return { value, low: value * Math.exp(-reach), high: value * Math.exp(reach), count };
}
