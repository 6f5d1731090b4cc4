import { expect, test } from 'vitest';
import { quantileOf, ranksAround, shareOf } from '../../../src/core/practice/estimates.ts';

// R. G. Newcombe, Statistics in Medicine 17 (1998), table I, method 3; the same by scipy 1.17.1, binomtest, "wilson".
test.each([
  [81, 263, 0.2553, 0.3662],
  [15, 148, 0.0624, 0.1605],
  [0, 20, 0, 0.1611],
  [1, 29, 0.0061, 0.1718],
])('Wilson: %d of %d', (hits, tries, low, high) => {
  const share = shareOf(hits, tries);
  expect(share.value).toBeCloseTo(hits / tries, 10);
  expect(share.low).toBeCloseTo(low, 4);
  expect(share.high).toBeCloseTo(high, 4);
});

test('without a try nothing is known', () => {
  expect(shareOf(0, 0)).toEqual({ value: 0, low: 0, high: 1 });
});

// By scipy 1.17.1, scipy.stats.binom; a rank of 0, or one more than there are values, is none.
test.each([
  [10, 0.5, 2, 9],
  [20, 0.5, 6, 15],
  [5, 0.5, 0, 6],
  [6, 0.5, 1, 6],
  [10, 0.9, 7, 11],
  [40, 0.9, 32, 40],
  [50, 0.9, 41, 50],
])('ranks around a quantile: %d values, %d', (count, p, low, high) => {
  expect(ranksAround(count, p)).toEqual([low, high]);
});

test('a quantile is the one of numpy 2.4.6, and has no bound where the sample is too small', () => {
  const times = [310, 280, 455, 390, 520, 610, 300];
  expect(quantileOf(times, 0.5)).toEqual({ value: 390, low: 280, high: 610 });
  expect(quantileOf(times, 0.9)?.value).toBeCloseTo(556, 10);
  expect(quantileOf(times, 0.9)?.high).toBeNull();
  expect(quantileOf([], 0.5)).toBeNull();
});
