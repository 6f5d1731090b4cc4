import { randomGamma, randomNormal } from 'd3-random';
import { logLogisticQuantile, skewedAt } from './distributions.ts';
import { type FingerNumber, fingerDwellMs } from './dwells.ts';
import { CORRECTED_STEPS, STEP_MS } from './intervals.ts';
import type { Model } from './model.ts';
import { AFTER_HOLD, type IntervalKind } from './pair-class.ts';
import { HOLD_DOWN_MS, HOLD_LAG_MS } from './parameters.ts';

/** One typist drawn from the population. All times in ms. */
export interface SampledTypist {
  interval(kind: IntervalKind): number;
  dwell(finger: FingerNumber): number;
  /** A deliberate hold: from its press to the letter's, and how long it is down; the quick are quick in both. */
  hold(): { readonly lagMs: number; readonly downMs: number };
  /** A normal onset of a key of a chord. */
  onset(sdMs: number): number;
}

/** No dwell is shorter: a typist's own mean may be drawn far below the others'. */
const LEAST_DWELL_MS = 30;

const NO_TABLE = new Float64Array(CORRECTED_STEPS);

/** Draws a typist; random: uniform in [0, 1). */
export function sampleTypist(model: Model, random: () => number): SampledTypist {
  const { betweenLnIki, beta, dwellMeanMs, dwellBetweenMs, dwellWithinMs, dwellRatio } =
    model.person.parameters;
  const normal = randomNormal.source(random)();
  const z = normal();
  const mean = Math.max(LEAST_DWELL_MS, dwellMeanMs + dwellBetweenMs * normal());
  const tables = new Map<IntervalKind, Float64Array>();
  const dwells = new Map<FingerNumber, () => number>();
  const tableOf = (kind: IntervalKind): Float64Array => {
    const known = tables.get(kind);
    if (known !== undefined) return known;
    const [table = NO_TABLE] = model.intervals.tablesFor(kind, [z], CORRECTED_STEPS);
    tables.set(kind, table);
    return table;
  };
  const dwellOf = (finger: FingerNumber): (() => number) => {
    const known = dwells.get(finger);
    if (known !== undefined) return known;
    const own = fingerDwellMs(finger, mean, dwellRatio);
    const scale = dwellWithinMs ** 2 / own;
    const draw = randomGamma.source(random)(own / scale, scale);
    dwells.set(finger, draw);
    return draw;
  };
  return {
    interval(kind) {
      if (kind === AFTER_HOLD) return skewedAt(normal(), HOLD_LAG_MS);
      const share = random();
      const table = tableOf(kind);
      if (share < (table[CORRECTED_STEPS - 1] ?? 0)) return timeAt(table, share);
      return logLogisticQuantile(share, model.intervals.alphaOf(kind) * Math.exp(betweenLnIki * z), beta);
    },
    dwell: (finger) => dwellOf(finger)(),
    hold() {
      const score = normal();
      return { lagMs: skewedAt(score, HOLD_LAG_MS), downMs: skewedAt(score, HOLD_DOWN_MS) };
    },
    onset: (sdMs) => sdMs * normal(),
  };
}

/** The time below which a share lies, between the table's steps. */
function timeAt(table: Float64Array, share: number): number {
  let low = 0;
  let high = CORRECTED_STEPS - 1;
  while (low + 1 < high) {
    const middle = (low + high) >> 1;
    if ((table[middle] ?? 0) > share) high = middle;
    else low = middle;
  }
  const from = table[low] ?? 0;
  const to = table[high] ?? from;
  return STEP_MS * (low + (to > from ? (share - from) / (to - from) : 1) * (high - low));
}
