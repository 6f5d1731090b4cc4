/**
 * When a need is to be practised again: the algorithm SM-2 of P. A. Woźniak, "Optimization of learning", master's thesis,
 * University of Technology in Poznań 1990 (its constants from memory). Plain data; days are of 24 hours.
 */
export interface Card {
  /** Successes in a row, each at its time. */
  readonly repetitions: number;
  /** How fast the intervals grow; 1.3 at least. */
  readonly easiness: number;
  readonly intervalDays: number;
  /** ms since 1970; null for a need never practised. */
  readonly dueAt: number | null;
  /** Its last grade was under 4: it is repeated the same day until it is not, which changes nothing else. */
  readonly again: boolean;
}

const DAY_MS = 24 * 60 * 60 * 1000;
const LEAST_EASINESS = 1.3;

/** A need that has not been practised. */
export const FRESH_CARD: Card = { repetitions: 0, easiness: 2.5, intervalDays: 0, dueAt: null, again: false };

/** How well a need went, 0 to 5: from 3 on it counts as known. */
export type Grade = 0 | 1 | 2 | 3 | 4 | 5;

/**
 * The card after a repetition at a time, ms since 1970. Under grade 3 it begins anew and keeps its easiness. Practised before
 * it is due it stays as it is, but for whether it is to come again the same day.
 */
export function repeated(card: Card, grade: Grade, now: number): Card {
  const again = grade < 4;
  if (grade < 3) return { ...card, repetitions: 0, intervalDays: 1, dueAt: now + DAY_MS, again };
  if (card.dueAt !== null && !hasCome(card.dueAt, now)) return { ...card, again };
  const missing = 5 - grade;
  const easiness = Math.max(LEAST_EASINESS, card.easiness + 0.1 - missing * (0.08 + missing * 0.02));
  const repetitions = card.repetitions + 1;
  const intervalDays =
    repetitions === 1 ? 1 : repetitions === 2 ? 6 : Math.ceil(card.intervalDays * card.easiness);
  return { repetitions, easiness, intervalDays, dueAt: now + intervalDays * DAY_MS, again };
}

/** Practising once a day must not depend on the hour: what falls due within this time counts as due, ms. */
const EARLY_MS = 8 * 60 * 60 * 1000;

const hasCome = (dueAt: number, now: number) => dueAt <= now + EARLY_MS;

/** Whether a card is to be repeated now; one never practised is not. */
export function isDue(card: Card, now: number): boolean {
  return card.again || (card.dueAt !== null && hasCome(card.dueAt, now));
}

/** What a session says about a need. */
export interface Showing {
  readonly tries: number;
  /** Right at the first press, with or without a hint. */
  readonly right: number;
  readonly hinted: number;
  /** Median of the session against the median before it; null where one of them is missing. */
  readonly pace: number | null;
}

/**
 * The grade of a session, our own rule: by the share of first tries that were right (95 % or more: 4, 85: 3, 60: 2,
 * 30: 1); 5 where besides none took a hint and it went no more than a quarter slower than before; no more than 3 with a
 * hint in every second try.
 */
export function gradeOf({ tries, right, hinted, pace }: Showing): Grade {
  const share = tries === 0 ? 0 : right / tries;
  if (share < 0.3) return 0;
  if (share < 0.6) return 1;
  if (share < 0.85) return 2;
  if (share < 0.95 || hinted * 2 >= tries) return 3;
  return hinted === 0 && (pace ?? 1) <= 1.25 ? 5 : 4;
}
