import { type Estimate, quantileOf, shareOf } from './estimates.ts';
import type { Attempt, KnownRoute, SessionLog } from './session-log.ts';
import { type Card, FRESH_CARD, gradeOf, repeated } from './spacing.ts';

/** Where a need stood before the design moved it. */
export interface Moved {
  readonly from: KnownRoute;
  /** The session that first met it at its new place began then, ms since 1970; null where none has yet. */
  readonly metAt: number | null;
}

/** What is known of one need since it last moved. Shares and times are of the last `RECENT_TRIES`. */
export interface NeedProgress {
  readonly need: string;
  readonly attempts: number;
  readonly errors: number;
  /** Share of first tries that were wrong, with the interval that says how sure it is. */
  readonly errorShare: Estimate;
  readonly median: Estimate | null;
  readonly ninetieth: Estimate | null;
  /** The first tries, oldest first: right or not. */
  readonly tries: readonly boolean[];
  readonly timesMs: readonly number[];
  readonly card: Card;
  readonly lastAt: number | null;
  readonly moved: Moved | null;
}

interface Tally {
  readonly attempts: number;
  readonly errors: number;
  readonly tries: readonly boolean[];
  readonly timesMs: readonly number[];
  readonly card: Card;
  readonly lastAt: number | null;
  readonly moved: Moved | null;
  readonly route: KnownRoute | null;
}

/** What sessions come to, need by need; more sessions can be added to it. */
export type Folded = ReadonlyMap<string, Tally>;

/** Figures are of so many last tries: they say how it goes now, not how it began. */
export const RECENT_TRIES = 50;

/**
 * Adds sessions, in order of time, to what came before them. A need that was moved begins anew and keeps its easiness; one
 * practised before it is due leaves its card as it is, unless it went wrong.
 */
export function foldSessions(sessions: readonly SessionLog[], before: Folded = new Map()): Folded {
  const tallies = new Map(before);
  for (const session of sessions) {
    for (const [need, attempts] of byNeed(session.attempts)) {
      const known = followed(
        tallies.get(need) ?? FRESH_TALLY,
        session.routes[need] ?? null,
        session.startedAt,
      );
      tallies.set(need, withSession(known, attempts));
    }
  }
  return tallies;
}

/** The progress of every need that was ever practised, as the design has the needs now. */
export function progressOf(
  folded: Folded,
  routeNow: (need: string) => KnownRoute | null,
): ReadonlyMap<string, NeedProgress> {
  const progress = new Map<string, NeedProgress>();
  for (const [need, tally] of folded)
    progress.set(need, summary(need, followed(tally, routeNow(need), null)));
  return progress;
}

function byNeed(attempts: readonly Attempt[]): ReadonlyMap<string, readonly Attempt[]> {
  const lists = new Map<string, Attempt[]>();
  for (const attempt of attempts) {
    const list = lists.get(attempt.need);
    if (list === undefined) lists.set(attempt.need, [attempt]);
    else list.push(attempt);
  }
  return lists;
}

const FRESH_TALLY: Tally = {
  attempts: 0,
  errors: 0,
  tries: [],
  timesMs: [],
  card: FRESH_CARD,
  lastAt: null,
  moved: null,
  route: null,
};

/** Begins anew where the need is no longer typed as it was; a need that is typed by nothing now is left as it was. */
function followed(tally: Tally, route: KnownRoute | null, metAt: number | null): Tally {
  if (route === null) return tally;
  const before = tally.route;
  if (before === null || before.signature === route.signature) return { ...tally, route };
  const card = { ...FRESH_CARD, easiness: tally.card.easiness };
  return { ...FRESH_TALLY, card, lastAt: tally.lastAt, moved: { from: before, metAt }, route };
}

function withSession(tally: Tally, attempts: readonly Attempt[]): Tally {
  const before = quantileOf(tally.timesMs, 0.5)?.value;
  const times = attempts.flatMap(({ ms }) => (ms === null ? [] : [ms]));
  const now = quantileOf(times, 0.5)?.value;
  const last = attempts.at(-1)?.at ?? 0;
  const right = attempts.filter((attempt) => attempt.right).length;
  const grade = gradeOf({
    tries: attempts.length,
    right,
    hinted: attempts.filter(({ hinted }) => hinted).length,
    pace: before === undefined || now === undefined ? null : now / before,
  });
  return {
    ...tally,
    attempts: tally.attempts + attempts.length,
    errors: tally.errors + attempts.length - right,
    tries: [...tally.tries, ...attempts.map((attempt) => attempt.right)].slice(-RECENT_TRIES),
    timesMs: [...tally.timesMs, ...times].slice(-RECENT_TRIES),
    card: repeated(tally.card, grade, last),
    lastAt: last,
  };
}

function summary(need: string, { route: _, ...tally }: Tally): NeedProgress {
  const { tries, timesMs } = tally;
  const wrong = tries.filter((right) => !right).length;
  return {
    need,
    ...tally,
    errorShare: shareOf(wrong, tries.length),
    median: quantileOf(timesMs, 0.5),
    ninetieth: quantileOf(timesMs, 0.9),
  };
}
