import { expect, test } from 'vitest';
import { chiSquaredQuantile, studentT975, weighed } from '../../../src/core/typist/fit-estimate.ts';
import { locate } from '../../../src/core/typist/fit-logistic.ts';
import { fitSpread } from '../../../src/core/typist/fit-spread.ts';

// Tables of NIST/SEMATECH, e-Handbook of Statistical Methods, 1.3.6.7; values from memory.
test.each([
  [4, 2.776],
  [10, 2.228],
  [30, 2.042],
  [120, 1.98],
])("Student's t with %d degrees of freedom: %d", (degrees, value) => {
  expect(Math.abs(studentT975(degrees) / value - 1)).toBeLessThan(0.01);
});
test.each([
  [0.025, 4, 0.484],
  [0.975, 4, 11.143],
  [0.025, 25, 13.12],
  [0.975, 25, 40.646],
])('chi squared at %d with %d degrees of freedom: %d', (share, degrees, value) => {
  expect(chiSquaredQuantile(share, degrees)).toBeCloseTo(value, 2);
});

test('own and sample are weighed by how sure they are', () => {
  const own = (half: number) => ({ value: 2, low: 2 / half, high: 2 * half, count: 9 });
  expect(weighed(null, 1, 0.15)).toBe(1);
  expect(weighed(own(1.001), 1, 0.15)).toBeCloseTo(2, 3);
  expect(weighed(own(50), 1, 0.15)).toBeCloseTo(1, 1);
  // As unsure as people differ: half way, on the logarithmic scale.
  expect(weighed(own(Math.exp(0.15 * 1.96)), 1, 0.15)).toBeCloseTo(Math.SQRT2, 3);
});

test('the location of three symmetric times is the middle one, and its interval lies about it', () => {
  const times = [-1, 0, 1].map((y) => ({ y, isBelow: false, cut: 1e9 }));
  const { at, low, high } = locate(times, 0.5);
  expect(at).toBeCloseTo(0, 6);
  expect(low).toBeCloseTo(-high, 6);
  expect(high).toBeGreaterThan(0.2);
});

test('times under a limit count as no more than that: where all are, the location lies below and is open downwards', () => {
  const below = Array.from({ length: 20 }, () => ({ y: 0, isBelow: true, cut: 1e9 }));
  const { high } = locate(below, 0.5);
  expect(high).toBeLessThan(0);
});

test('spread by hand: two keys 16 ms apart, four times', () => {
  const fit = fitSpread(Array.from({ length: 4 }, () => ({ hands: 'one' as const, onsetsMs: [0, 16] })));
  // Each is ± 8 about its middle: 128 / 16² over one degree of freedom.
  expect(fit?.value).toBeCloseTo(Math.SQRT1_2, 6);
  expect(fit?.low).toBeLessThan(0.5);
  expect(fit?.high).toBeGreaterThan(1.8);
  expect(fitSpread([{ hands: 'one', onsetsMs: [0, 16] }])).toBeNull();
});
