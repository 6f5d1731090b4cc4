import { postsOf } from '../board/posts.ts';
import type { Board, Finger } from '../keymap/types.ts';
import { BAND_LIMITS } from './parameters.ts';

/** Where a key stands, as far as the model asks. */
export interface Seat {
  readonly left: boolean;
  /** 0 thumb, 1 index to 4 little. */
  readonly finger: number;
  /** Rows towards the typist from the home row. */
  readonly row: number;
  /** Columns outwards from the finger's home column. */
  readonly column: number;
  readonly home: boolean;
}

const FINGER_NUMBER: Readonly<Record<Finger, number>> = { thumb: 0, index: 1, middle: 2, ring: 3, little: 4 };

/** The seats of a board's keys, in the board's order. */
export function seatsOf(board: Board): readonly Seat[] {
  const posts = postsOf(board);
  return board.keys.map((key) => ({
    left: key.hand === 'left',
    finger: FINGER_NUMBER[key.finger],
    row: posts.get(key.id)?.row ?? 0,
    column: posts.get(key.id)?.column ?? 0,
    home: key.home,
  }));
}

/**
 * A kind of interval: 0 to 43 are pair class × 4 + band (the double letter's bands are alike), the others below. The
 * table has no line for three fingers and two rows apart: it counts as one row apart.
 */
export type IntervalKind = number;
export const TO_THUMB: IntervalKind = 44;
export const FROM_THUMB: IntervalKind = 45;
/** Any letter to any letter. */
export const ANY_LETTERS: IntervalKind = 46;
/** A deliberate hold to the press that it is for. */
export const AFTER_HOLD: IntervalKind = 47;
export const KINDS = 48;

/** The band of a pair by its share of all letter pairs of the text. */
export function bandOf(share: number): number {
  return BAND_LIMITS.findIndex((limit) => share < limit) === -1
    ? BAND_LIMITS.length
    : BAND_LIMITS.findIndex((limit) => share < limit);
}

/** The pair class of two keys of the hands without thumbs, in the order of `PAIR_CLASSES`. */
export function pairClassOf(one: Seat, other: Seat, isSameKey: boolean): number {
  if (isSameKey) return 0;
  if (one.left !== other.left) return 2;
  const fingers = Math.abs(one.finger - other.finger);
  if (fingers === 0) return 1;
  const rows = Math.min(2, Math.abs(one.row - other.row));
  return fingers === 3 ? 9 + Math.min(1, rows) : 3 * fingers + rows;
}

/** The kind of interval from one key to another; share: of all letter pairs. */
export function intervalKind(one: Seat, other: Seat, isSameKey: boolean, share: number): IntervalKind {
  if (isSameKey) return bandOf(share);
  if (other.finger === 0) return TO_THUMB;
  if (one.finger === 0) return FROM_THUMB;
  return pairClassOf(one, other, isSameKey) * 4 + bandOf(share);
}
