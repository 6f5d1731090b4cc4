import type { RunCounts } from '../needs/counts-runs.ts';
import { fingerNumber } from './dwells.ts';
import {
  FROM_THUMB_GROUP,
  type IntervalGroup,
  type Measured,
  type MeasuredChord,
  sorted,
  TO_THUMB_GROUP,
} from './measured.ts';
import { bandOf, pairClassOf } from './pair-class.ts';
import { STANDARD_SEATS } from './standard-seats.ts';

/** A key as it was pressed and released on a standard keyboard; times in ms on any clock, `upMs` null where it was not seen. */
export interface RecordedKey {
  /** W3C code: a position, whatever stands on it. */
  readonly code: string;
  readonly downMs: number;
  readonly upMs: number | null;
  /** What it typed, to know how practised a pair is; not kept. */
  readonly char: string | null;
}

/** Gaps from here on are pauses and not rhythm, ms: common practice, no source. The fit knows that they are left out. */
export const PAUSE_MS = 2000;
/** A key that is down so long is held on purpose or rested on, ms: common practice, no source. */
export const LONGEST_DWELL_MS = 500;

/** Share of a pair of characters among all pairs of letters of a text; null where it is not known. */
export type PairShare = (one: string, other: string) => number | null;

/** Nobody knows how practised a pair is. */
export const NO_SHARES: PairShare = () => null;

/** What can be measured in a recorded run of typing, keys in the order of their presses. */
export function observed(keys: readonly RecordedKey[], shareOf: PairShare): Omit<Measured, 'chords'> {
  const intervals = keys.slice(1).flatMap((key, at) => {
    const before = keys[at];
    const group = before === undefined ? null : groupOf(before.code, key.code);
    if (before === undefined || group === null) return [];
    const ms = key.downMs - before.downMs;
    const share = before.char === null || key.char === null ? null : shareOf(before.char, key.char);
    const band = share === null || group >= TO_THUMB_GROUP ? null : bandOf(share);
    return ms > 0 && ms < PAUSE_MS ? [{ group, band, ms }] : [];
  });
  const dwells = keys.flatMap(({ code, downMs, upMs }) => {
    const seat = STANDARD_SEATS.get(code);
    if (seat === undefined || upMs === null) return [];
    const ms = upMs - downMs;
    return ms > 0 && ms < LONGEST_DWELL_MS ? [{ finger: fingerNumber(seat), ms }] : [];
  });
  return { intervals: sorted(intervals), dwells: sorted(dwells) };
}

/** Null where one of the keys is none that text is typed with, or both are the thumb's. */
function groupOf(one: string, other: string): IntervalGroup | null {
  const [a, b] = [STANDARD_SEATS.get(one), STANDARD_SEATS.get(other)];
  if (a === undefined || b === undefined || (a.finger === 0 && b.finger === 0)) return null;
  if (b.finger === 0) return TO_THUMB_GROUP;
  if (a.finger === 0) return FROM_THUMB_GROUP;
  return pairClassOf(a, b, one === other);
}

/** A chord out of the presses of its keys, in any order; null for fewer than two keys that are known. */
export function observedChord(
  presses: readonly { readonly code: string; readonly downMs: number }[],
): MeasuredChord | null {
  const seats = presses.map(({ code }) => STANDARD_SEATS.get(code)).filter((seat) => seat !== undefined);
  if (seats.length < 2 || seats.length < presses.length) return null;
  const downs = presses.map(({ downMs }) => downMs).toSorted((one, other) => one - other);
  const first = downs[0] ?? 0;
  const isOneHand = seats.every(({ left }) => left === seats[0]?.left);
  return { hands: isOneHand ? 'one' : 'two', onsetsMs: downs.map((down) => down - first) };
}

/** How practised pairs are, by a text's counts: shares among its pairs without spaces and line breaks, in small letters. */
export function pairSharesOf({ after }: RunCounts): PairShare {
  const pairs = new Map<string, number>();
  let all = 0;
  for (const [before, followers] of after) {
    if ([...before].length !== 1 || isBlank(before)) continue;
    for (const { char, count } of followers) {
      if (isBlank(char)) continue;
      const pair = (before + char).toLowerCase();
      pairs.set(pair, (pairs.get(pair) ?? 0) + count);
      all += count;
    }
  }
  return (one, other) => (all === 0 ? null : (pairs.get((one + other).toLowerCase()) ?? 0) / all);
}

function isBlank(char: string): boolean {
  return char.trim() === '';
}

/** The smallest step of the clock that events are stamped with, ms: some browsers round it. 0 for fewer than two times. */
export function clockStepMs(times: readonly number[]): number {
  const distinct = [...new Set(times)].sort((one, other) => one - other);
  const steps = distinct.slice(1).map((time, at) => time - (distinct[at] ?? time));
  return steps.length === 0 ? 0 : Math.min(...steps);
}
