import type { Board, ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';
import { watchedChords } from './accidents.ts';
import type { ChordToWatch } from './chord-misfires.ts';
import { chordMissShare } from './chord-misses.ts';
import {
  type ComfortReason,
  comfortReasons,
  KEY_DISCOMFORT,
  keyDiscomfort,
  pairDiscomfort,
} from './comfort.ts';
import { type Conflict, costOfKey, heldOn } from './conflicts.ts';
import { misfiresOfSets, setNumber } from './misfires-of-sets.ts';
import type { Seat } from './pair-class.ts';
import type { Person } from './person.ts';
import type { PressRuns } from './press-runs.ts';
import { type Situation, situationOf } from './situation.ts';
import { chordConflict, costBeside, isLike, isNear, shapesOf, standingChords } from './standing-chords.ts';

/** What is asked for. */
export interface ChordWish {
  /** Fewest and most keys, 2 to 4. */
  readonly keys: readonly [least: number, most: number];
  readonly windowMs: number;
  readonly layers: readonly LayerId[];
  /** Sets of one hand, sets over both, or any. */
  readonly hands: 'one' | 'two' | 'any';
  /** How many of the best to give. */
  readonly limit: number;
  /** How many sets to look at, at most; sets with fewer keys come first. */
  readonly mostSets: number;
}

export const USUAL_WISH: Omit<ChordWish, 'layers'> = {
  keys: [2, 4],
  windowMs: 50,
  hands: 'any',
  limit: 10,
  mostSets: 2_000_000,
};

/** A set of keys that could be the chord. */
export interface ChordSuggestion {
  readonly keys: readonly KeyId[];
  readonly misfiresPer1000Words: number;
  readonly missesPer1000Uses: number;
  readonly comfort: readonly ComfortReason[];
  readonly conflicts: readonly Conflict[];
  /** Chords of the same shape: the same seats of either hand. */
  readonly like: readonly ChordId[];
  /** Chords of as many keys that have all of them but one. */
  readonly near: readonly ChordId[];
  /** What it is ranked by, the less the better: misfires and, in the same coin, misses, discomfort, conflicts and likeness. */
  readonly cost: number;
}

export interface ChordSuggestions {
  readonly suggestions: readonly ChordSuggestion[];
  readonly considered: number;
  readonly stoppedBy: 'all' | 'budget';
}

/** In misfires per 1,000 words; judgement, no source. */
const MISS_COST = 0.02;
/** Progress is told after so many sets, which take about a hundredth of a second. */
const TELL_SETS = 8192;

interface Ranked {
  readonly keys: readonly number[];
  readonly cost: number;
}

/**
 * Ranks all sets of keys for a chord. Sets that are a chord on one of the layers already are left out. Of equal cost the
 * one whose keys come first on the board. `tell` hears now and then how many sets have been looked at.
 */
export function suggestChords(
  keymap: Keymap,
  runs: PressRuns,
  person: Person,
  wish: ChordWish,
  tell: (considered: number) => void = () => undefined,
): ChordSuggestions {
  const situation = situationOf(runs, person);
  const judge = judgeOf(keymap, situation, wish);
  const best: Ranked[] = [];
  let considered = 0;
  const consider = (keys: readonly number[]): boolean => {
    if (!judge.isWanted(keys)) return true;
    if (considered >= wish.mostSets) return false;
    considered++;
    if (considered % TELL_SETS === 0) tell(considered);
    const cost = judge.cost(keys);
    const worst = best.at(-1)?.cost ?? Number.POSITIVE_INFINITY;
    if (best.length < wish.limit || cost < worst) insert(best, { keys: [...keys], cost }, wish.limit);
    return true;
  };
  const [least, most] = wish.keys;
  let goesOn = true;
  for (let size = Math.max(2, least); goesOn && size <= Math.min(4, most); size++)
    goesOn = eachSet(keymap.board.keys.length, size, consider);
  const suggestions = best.filter(({ cost }) => Number.isFinite(cost)).map((ranked) => judge.explain(ranked));
  return { suggestions, considered, stoppedBy: goesOn ? 'all' : 'budget' };
}

/** How many sets of keys there are to look at. */
export function countSets({ keys }: Board, { keys: [least, most], hands }: ChordWish): number {
  const left = keys.filter(({ hand }) => hand === 'left').length;
  let sets = 0;
  for (let size = least; size <= most; size++) {
    const one = choose(left, size) + choose(keys.length - left, size);
    const all = choose(keys.length, size);
    sets += hands === 'any' ? all : hands === 'one' ? one : all - one;
  }
  return sets;
}

/** How many sets of `size` there are of `count`. */
function choose(count: number, size: number): number {
  let sets = 1;
  for (let at = 0; at < size; at++) sets = (sets * (count - at)) / (at + 1);
  return sets;
}

/** Puts one in its place by halving; of equal cost behind those that are there. */
function insert(best: Ranked[], ranked: Ranked, limit: number): void {
  let low = 0;
  let high = best.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((best[middle]?.cost ?? 0) > ranked.cost) high = middle;
    else low = middle + 1;
  }
  best.splice(low, 0, ranked);
  if (best.length > limit) best.pop();
}

/** Every set of `size` of `count` keys, ascending; false where `take` stopped it. */
function eachSet(count: number, size: number, take: (keys: readonly number[]) => boolean): boolean {
  const keys: number[] = [];
  const from = (first: number): boolean => {
    if (keys.length === size) return take(keys);
    for (let key = first; key <= count - (size - keys.length); key++) {
      keys.push(key);
      const goesOn = from(key + 1);
      keys.pop();
      if (!goesOn) return false;
    }
    return true;
  };
  return from(0);
}

interface Judge {
  /** Whether the hands are those asked for. */
  isWanted(keys: readonly number[]): boolean;
  cost(keys: readonly number[]): number;
  explain(ranked: Ranked): ChordSuggestion;
}

function judgeOf(keymap: Keymap, situation: Situation, wish: ChordWish): Judge {
  const { runs } = situation;
  const { seats, compiled } = runs;
  const layers = wish.layers.reduce((mask, id) => mask | (1 << compiled.layerIds.indexOf(id)), 0);
  const misfires = misfiresOfSets(situation, wish.windowMs, layers);
  const shapes = shapesOf(seats);
  const standing = standingChords(keymap, runs, wish.layers, shapes);
  const watched = watchedChords(keymap, runs);
  const misses = missTable(situation, wish.windowMs);
  const inTheWay = keymap.board.keys.map(({ id }) => heldOn(keymap, id, wish.layers));
  const ownCost = seats.map((seat, key) => keyDiscomfort(seat) + costOfKey(inTheWay[key] ?? null));
  const pairCost = seats.map((one) => Float64Array.from(seats, (other) => pairDiscomfort(one, other)));
  return {
    isWanted: (keys) => wish.hands === 'any' || isOneHand(seats, keys) === (wish.hands === 'one'),
    cost(keys) {
      let cost =
        (misfires.get(setNumber(keys)) ?? 0) + (keys.length - 2) * KEY_DISCOMFORT + misses(keys) * MISS_COST;
      for (const [at, key] of keys.entries()) {
        cost += ownCost[key] ?? 0;
        for (let other = at + 1; other < keys.length; other++) cost += pairCost[key]?.[keys[other] ?? 0] ?? 0;
      }
      return cost + costBeside(standing, keys, shapes);
    },
    explain({ keys, cost }) {
      const chord: ChordToWatch = { keys, windowMs: wish.windowMs, quietBeforeMs: 0, layers };
      const own = keys.map((key) => seats[key]).filter((seat) => seat !== undefined);
      return {
        keys: keys.map((key) => compiled.keyIds[key] ?? ''),
        misfiresPer1000Words: misfires.get(setNumber(keys)) ?? 0,
        missesPer1000Uses: 1000 * chordMissShare(situation, chord, [...watched, chord]),
        comfort: comfortReasons(own),
        conflicts: [
          ...standing.flatMap((each) => chordConflict(each, keys) ?? []),
          ...keys.flatMap((key) => inTheWay[key] ?? []),
        ],
        like: standing.filter((each) => isLike(each, keys, shapes)).map(({ id }) => id),
        near: standing.filter((each) => isNear(each, keys)).map(({ id }) => id),
        cost,
      };
    },
  };
}

/** Misses in 1,000 uses by spread alone: they depend on how many keys and hands there are. */
function missTable(situation: Situation, windowMs: number): (keys: readonly number[]) => number {
  const { seats } = situation.runs;
  const known = new Map<number, number>();
  return (keys) => {
    const name = keys.length * 2 + (isOneHand(seats, keys) ? 1 : 0);
    const found = known.get(name);
    if (found !== undefined) return found;
    const share = chordMissShare(situation, { keys, windowMs, quietBeforeMs: 0, layers: 0 }, []);
    known.set(name, share * 1000);
    return share * 1000;
  };
}

function isOneHand(seats: readonly Seat[], keys: readonly number[]): boolean {
  const left = seats[keys[0] ?? 0]?.left;
  for (const key of keys) if (seats[key]?.left !== left) return false;
  return true;
}
