import { chordsOf, layersOfChord } from '../keymap/timing.ts';
import type { ChordId, Keymap, LayerId } from '../keymap/types.ts';
import type { Conflict } from './conflicts.ts';
import type { Seat } from './pair-class.ts';
import type { PressRuns } from './press-runs.ts';

/** In misfires per 1,000 words; judgement, no source. */
const CONFLICT_COST = 3;
/** A chord that is easily taken for another one: its mirror image, or another key in one place. */
const LIKENESS_COST = { like: 0.2, near: 0.3 };

/** A chord that is there, as the ranking of sets of keys looks at it. */
export interface StandingChord {
  readonly id: ChordId;
  readonly size: number;
  /** By key: 1 where it is the chord's. */
  readonly has: Uint8Array;
  readonly shape: number;
}

/**
 * For each key a number of its seat, the same on both hands, such that the sum over a set's keys is the set's shape: logarithms
 * of primes, whose sums are those of products that come about in one way only.
 */
export function shapesOf(seats: readonly Seat[]): Float64Array {
  const numbers = new Map<string, number>();
  return Float64Array.from(seats, ({ finger, row, column }) => {
    const name = `${finger} ${row} ${column}`;
    const number = numbers.get(name) ?? numbers.size;
    numbers.set(name, number);
    return Math.log(primeNumber(number));
  });
}

/** The prime of a number, 2 for 0. */
function primeNumber(number: number): number {
  let prime = 1;
  for (let left = number + 1; left > 0; ) {
    prime++;
    let isPrime = true;
    for (let by = 2; by * by <= prime; by++) if (prime % by === 0) isPrime = false;
    if (isPrime) left--;
  }
  return prime;
}

/** The chords that are live on one of the layers. */
export function standingChords(
  keymap: Keymap,
  { compiled }: PressRuns,
  layers: readonly LayerId[],
  shapes: Float64Array,
): readonly StandingChord[] {
  return chordsOf(keymap)
    .filter((chord) => layersOfChord(keymap, chord).some((id) => layers.includes(id)))
    .map((chord) => {
      const has = new Uint8Array(compiled.keyIds.length);
      const keys = chord.keys.map((key) => compiled.keyNumbers.get(key) ?? -1);
      for (const key of keys) has[key] = 1;
      return { id: chord.id, has, size: keys.length, shape: shapeOf(shapes, keys) };
    });
}

function shapeOf(shapes: Float64Array, keys: readonly number[]): number {
  let sum = 0;
  for (const key of keys) sum += shapes[key] ?? 0;
  return sum;
}

function shared({ has }: StandingChord, keys: readonly number[]): number {
  let count = 0;
  for (const key of keys) count += has[key] ?? 0;
  return count;
}

/**
 * What a set costs beside the chords that are there: one inside another makes one of them wait, and one that is like another
 * is mistaken for it. Infinite where the set is a chord already.
 */
export function costBeside(
  standing: readonly StandingChord[],
  keys: readonly number[],
  shapes: Float64Array,
): number {
  let cost = 0;
  for (const chord of standing) {
    const common = shared(chord, keys);
    if (common === chord.size && common === keys.length) return Number.POSITIVE_INFINITY;
    if (common > 1 && (common === chord.size || common === keys.length)) cost += CONFLICT_COST;
    if (chord.size !== keys.length) continue;
    if (common === chord.size - 1) cost += LIKENESS_COST.near;
    if (isLike(chord, keys, shapes)) cost += LIKENESS_COST.like;
  }
  return cost;
}

/** A set inside a chord, or around one. */
export function chordConflict(chord: StandingChord, keys: readonly number[]): Conflict | null {
  const common = shared(chord, keys);
  if (common < 2 || chord.size === keys.length || common < Math.min(chord.size, keys.length)) return null;
  return { what: chord.size > keys.length ? 'larger-chord' : 'smaller-chord', chord: chord.id };
}

/** The same seats, on whichever hands. */
export function isLike(chord: StandingChord, keys: readonly number[], shapes: Float64Array): boolean {
  return chord.size === keys.length && Math.abs(chord.shape - shapeOf(shapes, keys)) < 1e-12;
}

/** As many keys, and all but one of them. */
export function isNear(chord: StandingChord, keys: readonly number[]): boolean {
  return chord.size === keys.length && shared(chord, keys) === chord.size - 1;
}
