/**
 * A logarithm of a time as the fit sees it, about a location that it shares with others: y − location is logistic. Of times
 * under a limit only that is known (`isBelow`: y is the limit then), and those over `cut` are not in the data at all.
 */
export interface LogTime {
  readonly y: number;
  readonly isBelow: boolean;
  readonly cut: number;
}

/** A location with the interval in which it lies with 95 %. */
export interface Location {
  readonly at: number;
  readonly low: number;
  readonly high: number;
}

/** Half of the 95 % quantile of chi squared with one degree of freedom: what a log-likelihood may fall by. */
export const HALF_CHI_95 = 1.9207294103470585;

/** A cut so many scales away leaves nothing out: exp −16 is a ten millionth. */
const FAR = 16;

interface Slope {
  readonly value: number;
  readonly first: number;
  readonly second: number;
}

/** Log-likelihood of a location at a scale, with its derivatives. */
function likelihood(times: readonly LogTime[], at: number, scale: number): Slope {
  let value = 0;
  let first = 0;
  let second = 0;
  const lnScale = Math.log(scale);
  for (const { y, isBelow, cut } of times) {
    const z = (y - at) / scale;
    const p = 1 / (1 + Math.exp(-z));
    const beyond = (cut - at) / scale;
    const q = beyond > FAR ? 1 : 1 / (1 + Math.exp(-beyond));
    // Of a density: ln p(1 − p) / scale; of a share below: ln p; both given that the time lies below the cut.
    value += (isBelow ? logOf(z) : logOf(z) + logOf(-z) - lnScale) - (q === 1 ? 0 : Math.log(q));
    first += ((isBelow ? p - 1 : 2 * p - 1) + (1 - q)) / scale;
    second += ((isBelow ? -1 : -2) * p * (1 - p) + q * (1 - q)) / scale ** 2;
  }
  return { value, first, second };
}

/** ln 1 / (1 + exp −z), without overflow. */
function logOf(z: number): number {
  return z > 0 ? -Math.log1p(Math.exp(-z)) : z - Math.log1p(Math.exp(z));
}

/** How well a scale fits, each group of times at its own best location: the profile log-likelihood. */
export function profileOfScale(groups: readonly (readonly LogTime[])[], scale: number): number {
  return groups.reduce((sum, times) => sum + likelihood(times, bestLocation(times, scale), scale).value, 0);
}

/** The location of greatest likelihood at a scale, by Newton's way with steps held short. */
export function bestLocation(times: readonly LogTime[], scale: number): number {
  let at = times.reduce((sum, { y }) => sum + y, 0) / Math.max(1, times.length);
  for (let round = 0; round < 40; round++) {
    const { first, second } = likelihood(times, at, scale);
    const step = second < 0 ? -first / second : Math.sign(first) * scale;
    const held = Math.max(-2 * scale, Math.min(2 * scale, step));
    at += held;
    if (Math.abs(held) < 1e-7) break;
  }
  return at;
}

/** The location and where its log-likelihood has fallen by `HALF_CHI_95`: a likelihood ratio interval (Wilks 1938). */
export function locate(times: readonly LogTime[], scale: number): Location {
  const at = bestLocation(times, scale);
  const { value, second } = likelihood(times, at, scale);
  const error = 1 / Math.sqrt(Math.max(1e-9, -second));
  const fallen = (location: number) => value - likelihood(times, location, scale).value - HALF_CHI_95;
  return { at, low: crossing(fallen, at, -2 * error), high: crossing(fallen, at, 2 * error) };
}

/** Where a function that is negative at `from` and grows in the direction of `step` is zero; at most 2^12 steps away. */
export function crossing(fallen: (at: number) => number, from: number, step: number): number {
  let inner = from;
  let outer = from + step;
  for (let round = 0; round < 12 && fallen(outer) < 0; round++) {
    inner = outer;
    outer = from + (outer - from) * 2;
  }
  for (let round = 0; round < 30; round++) {
    const middle = (inner + outer) / 2;
    if (fallen(middle) < 0) inner = middle;
    else outer = middle;
  }
  return (inner + outer) / 2;
}
