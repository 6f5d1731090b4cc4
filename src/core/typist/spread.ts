import { normalCdf } from './distributions.ts';
import type { Seat } from './pair-class.ts';
import { ONSET_SD_MS } from './parameters.ts';

/** SD of each key's onset in a chord over these keys, ms. */
export function onsetSdMs(seats: readonly Seat[], factor: number): number {
  const isOneHand = seats.every((seat) => seat.left === seats[0]?.left);
  return (isOneHand ? ONSET_SD_MS.oneHand : ONSET_SD_MS.twoHands) * factor;
}

const REACH = 8;
const PARTS = 200;

/** P(all keys of a chord come within a window of the first): the range of `keys` normal onsets; by Simpson's rule. */
export function spreadWithin(windowMs: number, keys: number, sdMs: number): number {
  if (windowMs <= 0 || sdMs <= 0) return windowMs < 0 || (windowMs === 0 && sdMs > 0) ? 0 : 1;
  const width = windowMs / sdMs;
  let sum = 0;
  for (let part = 0; part <= PARTS; part++) {
    const x = -REACH + (2 * REACH * part) / PARTS;
    const density = Math.exp((-x * x) / 2) / Math.sqrt(2 * Math.PI);
    const inside = (normalCdf(x + width) - normalCdf(x)) ** (keys - 1);
    sum += (part === 0 || part === PARTS ? 1 : part % 2 === 1 ? 4 : 2) * keys * density * inside;
  }
  return Math.min(1, (sum * 2 * REACH) / PARTS / 3);
}
