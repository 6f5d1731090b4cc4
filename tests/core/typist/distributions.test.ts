import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import {
  gammaSurvival,
  logLogisticCdf,
  logLogisticQuantile,
  NODES,
  normalCdf,
  skewedAt,
  skewedCdf,
} from '../../../src/core/typist/distributions.ts';
import { HOLD_DOWN_MS, HOLD_LAG_MS } from '../../../src/core/typist/parameters.ts';

describe('distributions', () => {
  // Abramowitz and Stegun, table 26.1.
  test.each([
    [0, 0.5],
    [1, 0.8413447],
    [1.96, 0.9750021],
    [-2.5, 0.0062097],
  ])('P(Z ≤ %f) = %f', (z, share) => {
    expect(normalCdf(z)).toBeCloseTo(share, 6);
  });

  property.prop([fc.double({ min: 0.01, max: 8, noNaN: true })])(
    'a gamma of shape 1 is exponential, of shape 2 known too',
    (x) => {
      expect(gammaSurvival(x, 1, 1)).toBeCloseTo(Math.exp(-x), 7);
      expect(gammaSurvival(x, 2, Math.SQRT2)).toBeCloseTo(Math.exp(-x) * (1 + x), 7);
    },
  );

  property.prop([fc.double({ min: 0.001, max: 0.999, noNaN: true }), fc.integer({ min: 50, max: 300 })])(
    'a log-logistic time has the share below it that it was asked for',
    (share, alpha) => {
      expect(logLogisticCdf(logLogisticQuantile(share, alpha, 3.9), alpha, 3.9)).toBeCloseTo(share, 9);
    },
  );

  test.each([
    ['lag', HOLD_LAG_MS],
    ['dwell', HOLD_DOWN_MS],
  ] as const)('the %s of deliberate holds has its three quantiles', (_, quantiles) => {
    const [low, middle, high] = quantiles;
    expect([low, middle, high].map((t) => skewedCdf(t, quantiles).toFixed(4))).toEqual([
      '0.0500',
      '0.5000',
      '0.9500',
    ]);
    expect(skewedAt(0, quantiles)).toBe(middle);
  });

  test.each([-2, -0.5, 0.5, 2])(
    'a skewed time of score %d has the share below it that a normal score has',
    (z) => {
      // To the error of the rational normal distribution function, 1.2e-7.
      expect(skewedCdf(skewedAt(z, HOLD_LAG_MS), HOLD_LAG_MS)).toBeCloseTo(normalCdf(z), 6);
    },
  );

  test('the nodes have the moments of a standard normal', () => {
    const moment = (power: number) => NODES.reduce((sum, { z, weight }) => sum + weight * z ** power, 0);
    expect([0, 1, 2, 3, 4, 6, 8].map((power) => moment(power).toFixed(6))).toEqual(
      [1, 0, 1, 0, 3, 15, 105].map((value) => value.toFixed(6)),
    );
  });
});
