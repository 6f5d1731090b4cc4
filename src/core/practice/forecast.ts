import { groupOfText, type NeedGroup } from './groups.ts';
import { type CurvePoint, fitPowerLaw, LEAST_POINTS, type Predicted, predictedAt } from './power-law.ts';
import type { Attempt, SessionLog } from './session-log.ts';

/** A point of a group's curve, and when it was reached, ms since 1970. */
export interface ReachedPoint extends CurvePoint {
  readonly at: number;
  /** Share of first tries that were wrong, among those that fell into it. */
  readonly errorShare: number;
}

/** So many right, timed presses make one point: geometric means, on which the law holds as on each. Our own choice. */
export const PRESSES_PER_POINT = 10;

/** The learning curve of a group of needs over all sessions, in order of time. A last point that is not full is left out. */
export function curveOf(sessions: readonly SessionLog[], group: NeedGroup): readonly ReachedPoint[] {
  const points: ReachedPoint[] = [];
  let practised = 0;
  let block: Attempt[] = [];
  let timed: CurvePoint[] = [];
  for (const attempt of sessions.flatMap(({ attempts }) => attempts)) {
    if (groupOfText(attempt.need) !== group) continue;
    practised++;
    block.push(attempt);
    const { ms, hinted } = attempt;
    if (ms !== null && ms > 0 && !hinted) timed.push({ practised, ms });
    if (timed.length < PRESSES_PER_POINT) continue;
    points.push({
      practised: geometricMean(timed.map((each) => each.practised)),
      ms: geometricMean(timed.map((each) => each.ms)),
      at: attempt.at,
      errorShare: block.filter(({ right }) => !right).length / block.length,
    });
    block = [];
    timed = [];
  }
  return points;
}

function geometricMean(values: readonly number[]): number {
  return Math.exp(values.reduce((sum, value) => sum + Math.log(value), 0) / values.length);
}

/** What lies ahead: a band, or the reason why nobody can say. */
export type Forecast =
  | { readonly state: 'too-few'; readonly points: number; readonly needed: number }
  | { readonly state: 'no-practice' }
  | {
      readonly state: 'band';
      readonly points: number;
      /** Practised presses of the group in a day, at the pace of the last two weeks. */
      readonly perDay: number;
      readonly days: readonly (Predicted & { readonly at: number })[];
    };

const DAY_MS = 24 * 60 * 60 * 1000;
const PACE_DAYS = 14;
const STEP_DAYS = 2;

/**
 * The coming weeks of a group, if practice goes on at the pace of the last two weeks: one prediction every two days. Under 50
 * points it says that it cannot know; without practice in those two weeks there is no pace to go by.
 */
export function forecastOf(points: readonly ReachedPoint[], now: number, weeks = 4): Forecast {
  if (points.length < LEAST_POINTS) {
    return { state: 'too-few', points: points.length, needed: LEAST_POINTS };
  }
  const law = fitPowerLaw(points);
  const perDay = paceOf(points, now);
  if (law === null || perDay === 0) return { state: 'no-practice' };
  const done = points.at(-1)?.practised ?? 1;
  const steps = Array.from({ length: (weeks * 7) / STEP_DAYS + 1 }, (_, at) => at * STEP_DAYS);
  const days = steps.map((day) => ({
    at: now + day * DAY_MS,
    ...predictedAt(law, done + day * perDay),
  }));
  return { state: 'band', points: points.length, perDay, days };
}

/** Over the last two weeks, or since the first point where that is later; a day at least. */
function paceOf(points: readonly ReachedPoint[], now: number): number {
  const since = now - PACE_DAYS * DAY_MS;
  const before = points.findLast(({ at }) => at < since) ?? points[0];
  const last = points.at(-1);
  if (before === undefined || last === undefined || last.at < since) return 0;
  const days = Math.max(1, (now - Math.max(since, before.at)) / DAY_MS);
  return (last.practised - before.practised) / days;
}
