import { quantileOf } from './estimates.ts';
import type { NeedProgress } from './progress.ts';
import { isDue } from './spacing.ts';

/** How a need stands, in the order in which needs are taken up. */
export const STANDINGS = ['changed', 'new', 'wrong', 'slow', 'due', 'known'] as const;

export type Standing = (typeof STANDINGS)[number];

/** So many right in a row, and a new need is no longer new. */
const STREAK = 3;
/** Of so many last tries, two wrong ones make a wrong need. */
const LAST_TRIES = 10;
/** So much slower than the typist's own median is slow. */
const SLOW = 1.5;
/** With fewer times a need is not called slow. */
const LEAST_TIMES = 4;

/**
 * How a need stands; the first that holds. Changed or new: not yet three right in a row at its place. Wrong: the last try, or
 * two of the last ten. Slow: half as slow again as the typist's usual time. Due: its time has come. These limits are our own.
 */
export function standingOf(
  progress: NeedProgress | undefined,
  usualMs: number | null,
  now: number,
): Standing {
  if (progress === undefined) return 'new';
  const { tries, moved, card, median, timesMs } = progress;
  if (!hasStreak(tries)) return moved === null ? 'new' : 'changed';
  const last = tries.slice(-LAST_TRIES);
  if (last.at(-1) === false || last.filter((right) => !right).length >= 2) return 'wrong';
  const isSlow = usualMs !== null && timesMs.length >= LEAST_TIMES && (median?.value ?? 0) > SLOW * usualMs;
  if (isSlow) return 'slow';
  return isDue(card, now) ? 'due' : 'known';
}

function hasStreak(tries: readonly boolean[]): boolean {
  let streak = 0;
  for (const right of tries) {
    streak = right ? streak + 1 : 0;
    if (streak === STREAK) return true;
  }
  return false;
}

/** The typist's usual time: the median over the needs of each one's median, ms; null before there is any. */
export function usualMsOf(progress: Iterable<NeedProgress>): number | null {
  const medians = [...progress].flatMap(({ median, timesMs }) =>
    median === null || timesMs.length < LEAST_TIMES ? [] : [median.value],
  );
  return quantileOf(medians, 0.5)?.value ?? null;
}
