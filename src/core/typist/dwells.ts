import { gammaSurvival, NODES } from './distributions.ts';
import { type Intervals, STEP_MS, STEPS } from './intervals.ts';
import { ANY_LETTERS, type IntervalKind, type Seat } from './pair-class.ts';
import { DWELL_BY_FINGER, GROUPS, type TypistParameters } from './parameters.ts';

/** A finger by hand: 0 a thumb, 1 to 4 left index to little, 5 to 8 right. */
export type FingerNumber = number;
export const FINGERS = 9;

export function fingerNumber({ left, finger }: Seat): FingerNumber {
  if (finger === 0) return 0;
  return left ? finger : finger + 4;
}

const NAMES = ['index', 'middle', 'ring', 'little'] as const;

/**
 * The mean dwell of a finger for a typist whose own mean is `mean`, ms; by the sample's ratios unless there are own ones.
 * The sample has no figure for thumbs: they get the mean.
 */
export function fingerDwellMs(finger: FingerNumber, mean: number, ratios?: readonly number[]): number {
  const own = ratios?.[finger];
  if (own !== undefined) return own * mean;
  const name = NAMES[(finger - 1) % 4];
  if (finger === 0 || name === undefined) return mean;
  return (DWELL_BY_FINGER[finger <= 4 ? 'left' : 'right'][name] * mean) / GROUPS.average.dwellMeanMs;
}

/** Nesting is looked at in steps of this, ms. */
const COARSE_MS = 10;
const COARSE_STEPS = 30;

/** How long keys are down, over the population of typists at one speed. */
export class Dwells {
  private readonly parameters: TypistParameters;
  private readonly tables: (Float64Array | undefined)[] = Array(FINGERS);
  private readonly outlasts: (Float64Array | undefined)[] = Array(FINGERS * FINGERS);
  private readonly intervals: Intervals;
  private nestingKnown: number | undefined;

  constructor(intervals: Intervals) {
    this.intervals = intervals;
    this.parameters = intervals.parameters;
  }

  /** P(dwell > t), t in ms. */
  survival(finger: FingerNumber, t: number): number {
    const table = this.table(finger);
    const at = Math.min(t / STEP_MS, STEPS - 1);
    const low = Math.floor(at);
    const from = table[low] ?? 0;
    return from + ((table[low + 1] ?? from) - from) * (at - low);
  }

  /** P(dwell > t) of the typists at a node, t in ms. */
  survivalAt(finger: FingerNumber, node: number, t: number): number {
    if (t <= 0) return 1;
    const { dwellMeanMs, dwellWithinMs, dwellBetweenMs, dwellRatio } = this.parameters;
    const mean = dwellMeanMs + dwellBetweenMs * (NODES[node]?.z ?? 0);
    return gammaSurvival(t, fingerDwellMs(finger, mean, dwellRatio), dwellWithinMs);
  }

  /** The dwell that a share of the population's is under, ms. */
  quantile(finger: FingerNumber, share: number): number {
    const step = this.table(finger).findIndex((down) => 1 - down >= share);
    return STEP_MS * (step < 0 ? STEPS - 1 : step);
  }

  /** P(dwell > t) at t = 0, 2, 4 … ms. */
  table(finger: FingerNumber): Float64Array {
    const known = this.tables[finger];
    if (known !== undefined) return known;
    const { dwellMeanMs, dwellWithinMs, dwellBetweenMs, dwellRatio } = this.parameters;
    const table = Float64Array.from({ length: STEPS }, (_, step) =>
      NODES.reduce((sum, { z, weight }) => {
        const mean = fingerDwellMs(finger, dwellMeanMs + dwellBetweenMs * z, dwellRatio);
        return sum + weight * gammaSurvival(step * STEP_MS, mean, dwellWithinMs);
      }, 0),
    );
    this.tables[finger] = table;
    return table;
  }

  /**
   * P(second key pressed and released inside the first). Independence overstates it about four times; it is scaled so
   * that letter pairs on average have the measured share.
   */
  nested(kind: IntervalKind, node: number, first: FingerNumber, second: FingerNumber): number {
    return this.nestedIfIndependent(kind, node, first, second) * this.nestingFactor();
  }

  /** Measured over modelled nesting. */
  nestingFactor(): number {
    if (this.nestingKnown === undefined) {
      const modelled = NODES.reduce(
        (sum, { weight }, node) => sum + weight * this.nestedIfIndependent(ANY_LETTERS, node, 0, 0),
        0,
      );
      this.nestingKnown = Math.min(1, this.parameters.nested / modelled);
    }
    return this.nestingKnown;
  }

  private nestedIfIndependent(
    kind: IntervalKind,
    node: number,
    first: FingerNumber,
    second: FingerNumber,
  ): number {
    const outlasts = this.outlast(first, second);
    let sum = 0;
    let before = 0;
    for (let step = 1; step < COARSE_STEPS; step++) {
      const within = this.intervals.within(kind, node, step * COARSE_MS);
      sum += ((within - before) * ((outlasts[step - 1] ?? 0) + (outlasts[step] ?? 0))) / 2;
      before = within;
    }
    return sum;
  }

  /** P(dwell of the first > t + dwell of the second) at t = 0, 10, 20 … ms. */
  private outlast(first: FingerNumber, second: FingerNumber): Float64Array {
    const known = this.outlasts[first * FINGERS + second];
    if (known !== undefined) return known;
    const table = Float64Array.from({ length: COARSE_STEPS }, (_, step) => {
      let sum = 0;
      for (let at = 0; at < 400; at += COARSE_MS) {
        const mass = this.survival(second, at) - this.survival(second, at + COARSE_MS);
        sum += mass * this.survival(first, step * COARSE_MS + at + COARSE_MS / 2);
      }
      return sum;
    });
    this.outlasts[first * FINGERS + second] = table;
    return table;
  }
}
