import { gammaSurvival } from './distributions.ts';

/** A figure, the interval in which it lies with 95 %, and out of how many observations. */
export interface Estimate {
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly count: number;
}

/** Standard normal quantile at 97.5 %. */
export const Z975 = 1.959963984540054;

/** Quantile at 97.5 % of Student's t: Abramowitz and Stegun, 26.7.5; within 1 % from 4 degrees of freedom on. */
export function studentT975(degrees: number): number {
  const z = Z975;
  return (
    z +
    (z ** 3 + z) / (4 * degrees) +
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / (96 * degrees ** 2) +
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / (384 * degrees ** 3)
  );
}

/** Quantile of chi squared: the distribution's survival turned round by halving. */
export function chiSquaredQuantile(share: number, degrees: number): number {
  const sd = Math.sqrt(2 * degrees);
  let low = 0;
  let high = degrees + 20 * sd;
  for (let round = 0; round < 60; round++) {
    const middle = (low + high) / 2;
    if (1 - gammaSurvival(middle, degrees, sd) < share) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

/** Half of the width of an estimate's interval on the logarithmic scale over 1.96: its standard error there. */
export function lnErrorOf({ low, high }: Estimate): number {
  return low > 0 && high > low ? Math.log(high / low) / 2 / Z975 : Number.POSITIVE_INFINITY;
}

/**
 * An own figure and the sample's, weighed by how sure each is: `lnSpread` is the SD of ln of such figures between people.
 * Without an own figure it is the sample's.
 */
export function weighed(own: Estimate | null, ofSample: number, lnSpread: number): number {
  if (own === null || !(own.value > 0)) return ofSample;
  const error = lnErrorOf(own);
  const weight = Number.isFinite(error) ? lnSpread ** 2 / (lnSpread ** 2 + error ** 2) : 0;
  return own.value ** weight * ofSample ** (1 - weight);
}
