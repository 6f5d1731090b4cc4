import type { FingerNumber } from './dwells.ts';
import { PAIR_CLASSES } from './parameters.ts';

/** How two keys of an interval lie to each other: 0 to 10 as in `PAIR_CLASSES`, then to the thumb, then from it. */
export type IntervalGroup = number;
export const TO_THUMB_GROUP: IntervalGroup = PAIR_CLASSES.length;
export const FROM_THUMB_GROUP: IntervalGroup = PAIR_CLASSES.length + 1;
export const GROUP_COUNT = PAIR_CLASSES.length + 2;

/** The time from one press to the next. */
export interface MeasuredInterval {
  readonly group: IntervalGroup;
  /** How practised the pair is, 0 to 3 by `bandOf`; null where the text's language is not known. */
  readonly band: number | null;
  readonly ms: number;
}

/** How long a key was down. */
export interface MeasuredDwell {
  readonly finger: FingerNumber;
  readonly ms: number;
}

/** A chord that was made when asked for: when each key came down, ms after the first, ascending. */
export interface MeasuredChord {
  readonly hands: 'one' | 'two';
  readonly onsetsMs: readonly number[];
}

/**
 * What was measured of a person. There is no order in it and no key: intervals and dwells are sorted by length, so that
 * nothing that was typed can be read out of them.
 */
export interface Measured {
  readonly intervals: readonly MeasuredInterval[];
  readonly dwells: readonly MeasuredDwell[];
  readonly chords: readonly MeasuredChord[];
}

export const NOTHING_MEASURED: Measured = { intervals: [], dwells: [], chords: [] };

/** Both together, sorted again: a second paragraph adds to the first. */
export function addedTo(before: Measured, more: Measured): Measured {
  return {
    intervals: sorted([...before.intervals, ...more.intervals]),
    dwells: sorted([...before.dwells, ...more.dwells]),
    chords: [...before.chords, ...more.chords],
  };
}

/** By length; the order in which they came is lost, on purpose. */
export function sorted<Timed extends { readonly ms: number }>(times: readonly Timed[]): readonly Timed[] {
  return times.toSorted((one, other) => one.ms - other.ms);
}
