import { describe, expect, test } from 'vitest';
import {
  logLogisticCdf,
  logLogisticQuantile,
  normalCdf,
  skewedAt,
  skewedCdf,
} from '../../../src/core/typist/distributions.ts';
import { GROUP_NAMES, GROUPS, PAIR_CLASSES } from '../../../src/core/typist/parameters.ts';
import { personAt, personOfGroup } from '../../../src/core/typist/person.ts';

describe('a quantile takes back what a distribution says', () => {
  test.each([0.01, 0.25, 0.5, 0.9, 0.999])('log-logistic, share %d', (share) => {
    expect(logLogisticCdf(logLogisticQuantile(share, 160, 3.86), 160, 3.86)).toBeCloseTo(share, 12);
  });

  test.each([-2, -0.5, 0, 0.5, 2])('skewed time, score %d', (z) => {
    // To the error of the rational normal distribution function, 1.2e-7.
    expect(skewedCdf(skewedAt(z, [63, 157, 576]), [63, 157, 576])).toBeCloseTo(normalCdf(z), 6);
  });
});

test('the quantiles that were measured are met: Shift to letter 5, 50 and 95 % at 63, 157 and 576 ms', () => {
  const quantiles = [63, 157, 576] as const;
  expect([-1.6448536, 0, 1.6448536].map((z) => Math.round(skewedAt(z, quantiles)))).toEqual([63, 157, 576]);
});

test('every table by pair class has a row for each class', () => {
  for (const name of GROUP_NAMES) {
    for (const table of [GROUPS[name].classRatio, GROUPS[name].within40, GROUPS[name].within60]) {
      expect(table).toHaveLength(PAIR_CLASSES.length);
    }
  }
});

describe('typists of an exact speed', () => {
  test.each(GROUP_NAMES)('at the mean speed of %s typists they are these', (name) => {
    const { alphaMs, beta, dwellMeanMs } = personAt(GROUPS[name].wpm).parameters;
    const group = personOfGroup(name).parameters;
    expect(alphaMs).toBeCloseTo(group.alphaMs, 9);
    expect(beta).toBeCloseTo(group.beta, 9);
    expect(dwellMeanMs).toBeCloseTo(group.dwellMeanMs, 9);
  });

  test('the faster, the shorter the intervals, within the sample and beyond it', () => {
    const alphas = [15, 25, 35, 45, 60, 80, 95, 110, 140].map((wpm) => personAt(wpm).parameters.alphaMs);
    expect(alphas).toEqual(alphas.toSorted((one, other) => other - one));
    expect(new Set(alphas).size).toBe(alphas.length);
  });
});
