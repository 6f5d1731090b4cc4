import type { Batches } from './tally.ts';

/** A rate and the interval in which it lies with 95 %. */
export interface Rate {
  readonly rate: number;
  readonly low: number;
  readonly high: number;
}

const Z = 1.96;

/**
 * A mean out of batches (typists): sums over counts, the interval by the spread between batches alone. A single one tells
 * nothing of it: then there is no upper end.
 */
export function meanOf({ hits, tries }: Batches): Rate {
  const all = tries.reduce((sum, each) => sum + each, 0);
  const rate = all === 0 ? 0 : hits.reduce((sum, each) => sum + each, 0) / all;
  if (tries.length < 2) return { rate, low: 0, high: Number.MAX_VALUE };
  const spread = hits.reduce((sum, each, batch) => sum + (each - rate * (tries[batch] ?? 0)) ** 2, 0);
  const deviation = Math.sqrt((spread * tries.length) / (tries.length - 1)) / all;
  return { rate, low: Math.max(0, rate - Z * deviation), high: rate + Z * deviation };
}

/**
 * A rate out of batches (typists): hits over tries, `per` of them. The interval is by the spread between batches, and no
 * narrower than counting allows; without a hit it ends at three over all tries (the rule of three).
 */
export function rateOf(batches: Batches | undefined, tries: readonly number[], per: number): Rate {
  const all = tries.reduce((sum, each) => sum + each, 0);
  if (all === 0) return { rate: 0, low: 0, high: per };
  const hits = tries.map((_, batch) => batches?.hits[batch] ?? 0);
  const sum = hits.reduce((total, each) => total + each, 0);
  const share = sum / all;
  if (sum === 0) return { rate: 0, low: 0, high: (3 * per) / all };
  const spread = hits.reduce((total, each, batch) => total + (each - share * (tries[batch] ?? 0)) ** 2, 0);
  const deviation = Math.sqrt(Math.max((spread * tries.length) / Math.max(1, tries.length - 1), sum)) / all;
  return {
    rate: share * per,
    low: Math.max(0, (share - Z * deviation) * per),
    high: (share + Z * deviation) * per,
  };
}
