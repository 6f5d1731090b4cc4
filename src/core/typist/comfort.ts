import type { Seat } from './pair-class.ts';

/** Why a set of keys is easy or hard to press together. */
export type ComfortReason =
  | 'home-row'
  | 'same-row'
  | 'neighbouring-fingers'
  | 'with-thumb'
  | 'finger-twice'
  | 'rows-apart'
  | 'off-the-finger-s-column'
  | 'little-finger'
  | 'two-hands';

/**
 * What discomfort costs, in misfires per 1,000 words that one would take to be rid of it. Judgement, no source: common practice
 * agrees on the order, not on the sizes.
 */
const COSTS = {
  fingerTwice: 20,
  perRowApart: 0.8,
  perFingerSkipped: 0.3,
  offHomeRow: 0.4,
  offColumn: 0.6,
  littleFinger: 0.3,
  perKeyBeyondTwo: 0.6,
  twoHands: 0.2,
};

/** Discomfort of one key of a chord. */
export function keyDiscomfort({ finger, row, column }: Seat): number {
  if (finger === 0) return Math.abs(column) * COSTS.offColumn * 0.5;
  return (
    Math.abs(row) * COSTS.offHomeRow +
    (column === 0 ? 0 : COSTS.offColumn) +
    (finger === 4 ? COSTS.littleFinger : 0)
  );
}

/** Discomfort that two keys of a chord add by lying where they lie to each other. */
export function pairDiscomfort(one: Seat, other: Seat): number {
  if (one.left !== other.left) return COSTS.twoHands;
  if (one.finger === other.finger) return COSTS.fingerTwice;
  if (one.finger === 0 || other.finger === 0) return 0;
  const skipped = Math.abs(one.finger - other.finger) - 1;
  return Math.abs(one.row - other.row) * COSTS.perRowApart + skipped * COSTS.perFingerSkipped;
}

/** What every key beyond the second costs. */
export const KEY_DISCOMFORT = COSTS.perKeyBeyondTwo;

/** The reasons in words of the program; those in favour first. */
export function comfortReasons(seats: readonly Seat[]): readonly ComfortReason[] {
  const fingers = seats.filter(({ finger }) => finger > 0);
  const reasons: ComfortReason[] = [];
  if (fingers.length > 0 && fingers.every(({ row }) => row === 0)) reasons.push('home-row');
  else if (fingers.length > 1 && fingers.every(({ row }) => row === fingers[0]?.row))
    reasons.push('same-row');
  if (areSideBySide(fingers)) reasons.push('neighbouring-fingers');
  if (fingers.length < seats.length) reasons.push('with-thumb');
  if (new Set(seats.map(({ left, finger }) => `${left} ${finger}`)).size < seats.length)
    reasons.push('finger-twice');
  if (areRowsApart(fingers)) reasons.push('rows-apart');
  if (fingers.some(({ column }) => column !== 0)) reasons.push('off-the-finger-s-column');
  if (fingers.some(({ finger }) => finger === 4)) reasons.push('little-finger');
  if (seats.some(({ left }) => left !== seats[0]?.left)) reasons.push('two-hands');
  return reasons;
}

function areSideBySide(seats: readonly Seat[]): boolean {
  const numbers = seats.map(({ finger }) => finger);
  return (
    seats.length > 1 &&
    seats.every(({ left }) => left === seats[0]?.left) &&
    new Set(numbers).size === numbers.length &&
    Math.max(...numbers) - Math.min(...numbers) === numbers.length - 1
  );
}

function areRowsApart(seats: readonly Seat[]): boolean {
  return seats.some((one) => seats.some((other) => one.left === other.left && one.row !== other.row));
}
