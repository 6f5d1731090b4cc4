/** A figure and how sure it is: the bounds within which the true one lies with 95 %; null where so few tries give none. */
export interface Estimate {
  readonly value: number;
  readonly low: number | null;
  readonly high: number | null;
}

/** The 97.5 % point of a standard normal. */
const Z = 1.959963984540054;

/**
 * A share out of tries with Wilson's score interval (E. B. Wilson 1927, Journal of the American Statistical Association
 * 22, 209 to 212), which holds for few tries and for shares near 0 and 1. Without a try nothing is known: 0 to 1.
 */
export function shareOf(hits: number, tries: number): Estimate {
  if (tries === 0) return { value: 0, low: 0, high: 1 };
  const share = hits / tries;
  const spread = Z * Math.sqrt((share * (1 - share)) / tries + Z ** 2 / (4 * tries ** 2));
  const middle = share + Z ** 2 / (2 * tries);
  const whole = 1 + Z ** 2 / tries;
  return {
    value: share,
    low: Math.max(0, (middle - spread) / whole),
    high: Math.min(1, (middle + spread) / whole),
  };
}

/**
 * A quantile of a sample (p of 0 to 1; between two values in proportion, Hyndman and Fan 1996, type 7), with the interval
 * between two order statistics that holds for any distribution (David and Nagaraja, Order Statistics, 2003, section 7.1).
 * A bound is null where the sample is too small to have one. Null without values.
 */
export function quantileOf(values: readonly number[], p: number): Estimate | null {
  const sorted = values.toSorted((one, other) => one - other);
  const count = sorted.length;
  if (count === 0) return null;
  const at = (count - 1) * p;
  const below = sorted[Math.floor(at)] ?? 0;
  const above = sorted[Math.ceil(at)] ?? below;
  const [low, high] = ranksAround(count, p);
  return {
    value: below + (above - below) * (at - Math.floor(at)),
    low: sorted[low - 1] ?? null,
    high: sorted[high - 1] ?? null,
  };
}

const TAIL = 0.025;

const remembered = new Map<string, readonly [low: number, high: number]>();

/**
 * The ranks, counted from 1, between which a quantile lies with 95 % or more: the lower is 0 and the higher is one more
 * than there are where there is none. How many values lie below the quantile is binomial. p: above 0 and under 1.
 */
export function ranksAround(count: number, p: number): readonly [low: number, high: number] {
  const name = `${count} ${p}`;
  const known = remembered.get(name);
  if (known !== undefined) return known;
  let low = 0;
  let high = count + 1;
  let below = 0;
  let term = (1 - p) ** count;
  for (let hits = 0; hits <= count; hits++) {
    const upTo = below + term;
    if (upTo <= TAIL) low = hits + 1;
    if (1 - below <= TAIL && high === count + 1) high = hits;
    below = upTo;
    term *= ((count - hits) / (hits + 1)) * (p / (1 - p));
  }
  remembered.set(name, [low, high]);
  return [low, high];
}
