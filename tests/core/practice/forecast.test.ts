import { describe, expect, test } from 'vitest';
import { curveOf, forecastOf } from '../../../src/core/practice/forecast.ts';
import type { SessionLog } from '../../../src/core/practice/session-log.ts';

const DAY = 24 * 60 * 60 * 1000;

/** One session a day with so many presses of "(", each by the law 2000 × n^−0.3, every tenth of them wrong. */
function days(count: number, presses: number): SessionLog[] {
  let practised = 0;
  return Array.from({ length: count }, (_, day) => ({
    startedAt: day * DAY,
    activeMs: 300_000,
    routes: {},
    attempts: Array.from({ length: presses }, (_, at) => {
      practised++;
      const right = practised % 10 !== 0;
      const ms = right ? 2000 * practised ** -0.3 : null;
      return { need: '(', at: day * DAY + at * 1000, right, ms, hinted: false, diagnosis: null };
    }),
  }));
}

describe('a learning curve', () => {
  test('has a point for ten timed presses, at their geometric mean, with the errors between', () => {
    const points = curveOf(days(1, 25), 'symbols');
    expect(points).toHaveLength(2);
    // The geometric means of 1 to 9 and 11, and of their times.
    expect(points[0]?.practised).toBeCloseTo((362_880 * 11) ** 0.1, 8);
    expect(points[0]?.ms).toBeCloseTo(2000 * (362_880 * 11) ** -0.03, 8);
    expect(points[0]?.errorShare).toBeCloseTo(1 / 11, 10);
  });

  test('is of its own group alone', () => {
    expect(curveOf(days(1, 25), 'letters')).toEqual([]);
  });
});

describe('a forecast', () => {
  test('under fifty points cannot know, and says how many there are', () => {
    const points = curveOf(days(5, 60), 'symbols');
    expect(forecastOf(points, 5 * DAY)).toEqual({ state: 'too-few', points: 27, needed: 50 });
  });

  test('from fifty on is a band over four weeks that the law runs through', () => {
    const points = curveOf(days(14, 60), 'symbols');
    const forecast = forecastOf(points, 14 * DAY);
    if (forecast.state !== 'band') throw new Error(forecast.state);
    expect(forecast.perDay).toBeCloseTo(60, -1);
    expect(forecast.days).toHaveLength(15);
    const last = forecast.days.at(-1);
    const practised = (points.at(-1)?.practised ?? 0) + 28 * forecast.perDay;
    expect((last?.ms ?? 0) / (2000 * practised ** -0.3)).toBeCloseTo(1, 2);
    for (const { low, ms, high } of forecast.days) expect(low <= ms && ms <= high).toBe(true);
  });

  test('has no pace to go by after two weeks without practice', () => {
    const points = curveOf(days(14, 60), 'symbols');
    expect(forecastOf(points, 40 * DAY)).toEqual({ state: 'no-practice' });
  });
});
