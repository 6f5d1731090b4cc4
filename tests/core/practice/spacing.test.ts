import { expect, test } from 'vitest';
import {
  type Card,
  FRESH_CARD,
  type Grade,
  gradeOf,
  isDue,
  repeated,
} from '../../../src/core/practice/spacing.ts';

const DAY = 24 * 60 * 60 * 1000;

/** Repeats a card on the day on which it is due. */
function after(...grades: Grade[]): Card {
  return grades.reduce((card, grade) => repeated(card, grade, card.dueAt ?? 0), FRESH_CARD);
}

test('SM-2: one day, six days, then times the easiness, rounded up', () => {
  expect(after(4)).toEqual({ repetitions: 1, easiness: 2.5, intervalDays: 1, dueAt: DAY, again: false });
  expect(after(4, 4)).toMatchObject({ intervalDays: 6, dueAt: 7 * DAY });
  expect(after(4, 4, 4).intervalDays).toBe(15);
  expect(after(4, 4, 4, 4).intervalDays).toBe(38);
});

// The step of the easiness for each grade, from the formula of SM-2.
test.each([
  [5, 2.6],
  [4, 2.5],
  [3, 2.36],
] as const)('SM-2: grade %d brings the easiness from 2.5 to %d', (grade, easiness) => {
  expect(after(grade).easiness).toBeCloseTo(easiness, 10);
});

test('SM-2: under grade 3 it begins anew and keeps its easiness; it never falls under 1.3', () => {
  expect(after(5, 5, 5, 2)).toMatchObject({ repetitions: 0, intervalDays: 1 });
  expect(after(5, 5, 5, 2).easiness).toBe(after(5, 5, 5).easiness);
  expect(after(...Array<Grade>(20).fill(3)).easiness).toBe(1.3);
});

test('SM-2: under grade 4 it comes again the same day, until it is 4; the plan stays', () => {
  const first = repeated(FRESH_CARD, 3, 0);
  expect(first).toMatchObject({ again: true, dueAt: DAY });
  expect(isDue(first, 1000)).toBe(true);
  expect(repeated(first, 5, 1000)).toEqual({ ...first, again: false });
  expect(repeated(first, 3, 1000)).toEqual(first);
});

test('practised before it is due it stays as planned', () => {
  const card = after(4, 4);
  expect(repeated(card, 5, (card.dueAt ?? 0) - 3 * DAY)).toEqual(card);
});

test('what falls due today counts as due in the morning', () => {
  const card = repeated(FRESH_CARD, 4, 0);
  expect(isDue(card, DAY - 8 * 3_600_000)).toBe(true);
  expect(isDue(card, DAY - 9 * 3_600_000)).toBe(false);
  expect(isDue(FRESH_CARD, DAY)).toBe(false);
});

test.each([
  [{ tries: 10, right: 10, hinted: 0, pace: null }, 5],
  [{ tries: 10, right: 10, hinted: 0, pace: 1.4 }, 4],
  [{ tries: 10, right: 10, hinted: 1, pace: 1 }, 4],
  [{ tries: 4, right: 4, hinted: 2, pace: 1 }, 3],
  [{ tries: 10, right: 9, hinted: 0, pace: 1 }, 3],
  [{ tries: 10, right: 7, hinted: 0, pace: 1 }, 2],
  [{ tries: 10, right: 3, hinted: 0, pace: 1 }, 1],
  [{ tries: 10, right: 2, hinted: 0, pace: 1 }, 0],
  [{ tries: 0, right: 0, hinted: 0, pace: null }, 0],
])('a session of %o has grade %d', (showing, grade) => {
  expect(gradeOf(showing)).toBe(grade);
});
