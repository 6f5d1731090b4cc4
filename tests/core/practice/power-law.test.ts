import { randomLcg, randomNormal } from 'd3-random';
import { expect, test } from 'vitest';
import {
  type CurvePoint,
  fitPowerLaw,
  predictedAt,
  studentQuantile,
} from '../../../src/core/practice/power-law.ts';

// By scipy 1.17.1, scipy.stats.t.ppf(0.975, df).
test.each([
  [10, 2.228139],
  [20, 2.085963],
  [30, 2.042272],
  [48, 2.010635],
  [60, 2.000298],
  [118, 1.980272],
])("Student's t for %d degrees of freedom", (freedom, quantile) => {
  expect(studentQuantile(freedom)).toBeCloseTo(quantile, 3);
});

const LEARNT: readonly CurvePoint[] = [
  [10, 900],
  [20, 700],
  [35, 640],
  [50, 520],
  [80, 500],
  [120, 430],
  [180, 390],
  [260, 345],
  [400, 310],
  [600, 300],
].map(([practised = 0, ms = 0]) => ({ practised, ms }));

// By scipy 1.17.1, scipy.stats.linregress on the logarithms, and the prediction interval from its figures.
test('fit and prediction are those of a statistics library', () => {
  const law = fitPowerLaw(LEARNT);
  if (law === null) throw new Error('no fit');
  expect(law.a).toBeCloseTo(1626.1669, 3);
  expect(law.b).toBeCloseTo(0.27380998, 7);
  expect(law.spread).toBeCloseTo(0.0420087, 6);
  const { ms, low, high } = predictedAt(law, 1000);
  expect(ms).toBeCloseTo(245.3213, 3);
  expect(low).toBeCloseTo(218.19, 0);
  expect(high).toBeCloseTo(275.82, 0);
});

test('a law without scatter is found as it was made', () => {
  const law = fitPowerLaw(
    [1, 10, 100, 1000].map((practised) => ({ practised, ms: 2000 * practised ** -0.4 })),
  );
  expect(law?.a).toBeCloseTo(2000, 6);
  expect(law?.b).toBeCloseTo(0.4, 10);
});

test('too few points, or all at one place, have no fit', () => {
  expect(fitPowerLaw(LEARNT.slice(0, 2))).toBeNull();
  expect(fitPowerLaw([1, 2, 3].map((ms) => ({ practised: 5, ms })))).toBeNull();
});

test('made typists: the interval holds the next weeks with 95 %, whatever law and spread they have', () => {
  const random = randomLcg(0.37);
  const normal = randomNormal.source(random)(0, 1);
  const runs = 3000;
  let held = 0;
  for (let run = 0; run < runs; run++) {
    const a = 600 + 2400 * random();
    const b = 0.1 + 0.4 * random();
    const spread = 0.05 + 0.25 * random();
    const made = (practised: number) => a * practised ** -b * Math.exp(spread * normal());
    const count = 50 + Math.floor(40 * random());
    const points = Array.from({ length: count }, (_, at) => ({
      practised: 10 * at + 5,
      ms: made(10 * at + 5),
    }));
    const law = fitPowerLaw(points);
    if (law === null) throw new Error('no fit');
    const ahead = count * 10 * (1 + 3 * random());
    const { low, high } = predictedAt(law, ahead);
    const came = made(ahead);
    if (came >= low && came <= high) held++;
  }
  // Three standard errors of a share of 0.95 in 3,000 runs are 0.012.
  expect(held / runs).toBeGreaterThan(0.938);
  expect(held / runs).toBeLessThan(0.962);
});
