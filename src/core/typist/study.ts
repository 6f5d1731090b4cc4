import type { Keymap } from '../keymap/types.ts';
import type { Cause } from './chord-misfires.ts';
import { type PressedThing, pressedThings } from './pressed-things.ts';
import type { Situation } from './situation.ts';

/** One choice and what it brings: misfires per 1,000 words, misses per 1,000 uses. */
export interface ChoicePoint {
  /** The window or the hold after, ms. */
  readonly ms: number;
  readonly misfires: number;
  readonly misses: number;
}

/** A run of presses that does damage: how often it is typed, and how often it goes wrong, in 1,000 words. */
export interface DamagingRun {
  /** Empty for slips of two neighbouring fingers. */
  readonly things: readonly PressedThing[];
  readonly typedPer1000Words: number;
  readonly misfires: number;
}

/** The choice that does least harm, and the uses in 1,000 words that this was worked out with. */
export interface SuggestedChoice {
  readonly point: ChoicePoint;
  readonly usesPer1000Words: number;
  /** Whether the uses are assumed, because the text itself makes fewer. */
  readonly assumed: boolean;
}

/** Uses in 1,000 words that are assumed where the text makes fewer: about three on a page. An assumption. */
export const ASSUMED_USES = 10;

/** So many accidents in 1,000 words are no difference. Our choice. */
const NO_DIFFERENCE = 0.1;

/**
 * The choice with the fewest accidents in 1,000 words, a misfire weighing as much as a miss; of those that hardly differ the
 * shortest, for letters wait the less. Points under `leastMs` are no choice.
 */
export function leastHarm(
  points: readonly ChoicePoint[],
  uses: number,
  leastMs: number,
): SuggestedChoice | null {
  const usesPer1000Words = Math.max(ASSUMED_USES, uses);
  const harm = ({ misfires, misses }: ChoicePoint) => misfires + (misses * usesPer1000Words) / 1000;
  const choices = points.filter(({ ms }) => ms >= leastMs);
  const least = Math.min(...choices.map(harm));
  const point = choices.find((each) => harm(each) <= least + NO_DIFFERENCE);
  return point === undefined ? null : { point, usesPer1000Words, assumed: uses < ASSUMED_USES };
}

/** The runs that cause accidents by what they are on the design, the worst first. */
export function damagingRuns(
  keymap: Keymap,
  { runs, contexts, kinds }: Situation,
  causes: readonly Cause[],
): readonly DamagingRun[] {
  return causes.map(({ presses, per1000Words }) => ({
    things: pressedThings(keymap, runs, presses),
    typedPer1000Words:
      presses.length === 1
        ? (kinds.per1000[presses[0] ?? 0] ?? 0)
        : presses.length === 0
          ? 0
          : contexts.countOf(presses),
    misfires: per1000Words,
  }));
}

/** The rates at a choice between two points, by a straight line; the nearest point beyond the ends. */
export function between(points: readonly ChoicePoint[], ms: number): ChoicePoint | null {
  const at = points.findIndex((point) => point.ms >= ms);
  const after = points[at] ?? points.at(-1);
  if (after === undefined) return null;
  const before = points[at - 1];
  if (before === undefined || at <= 0) return { ...after, ms };
  const part = (ms - before.ms) / (after.ms - before.ms);
  const mix = (one: number, other: number) => one + part * (other - one);
  return { ms, misfires: mix(before.misfires, after.misfires), misses: mix(before.misses, after.misses) };
}
