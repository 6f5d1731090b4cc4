import { NODES } from './distributions.ts';
import type { FingerNumber } from './dwells.ts';
import { STEP_MS, STEPS } from './intervals.ts';
import type { Model } from './model.ts';
import type { IntervalKind } from './pair-class.ts';

/** Where in the window the last key of a run comes on average, given that it comes within it: what the first keys must outlast. */
const LATE = 8 / 9;

/**
 * For each node, P(a run of presses comes within a window, all keys still down): the intervals between them, and the
 * fingers of all but the last. Intervals are independent (measured lag-1 autocorrelation of ln interval: 0.05).
 */
export function runWithin(
  model: Model,
  kinds: readonly IntervalKind[],
  fingers: readonly FingerNumber[],
  windowMs: number,
): readonly number[] {
  const steps = Math.min(STEPS - 1, windowMs / STEP_MS);
  const [kind = 0] = kinds;
  const [finger = 0] = fingers;
  if (kinds.length === 1) return model.together(kind, finger).map((table) => at(table, steps));
  const outlasts = fingers
    .slice(0, -1)
    .reduce((product, first) => product * model.dwells.survival(first, windowMs * LATE), 1);
  return NODES.map((_, node) => {
    const tables = kinds.map((each, place) =>
      place === kinds.length - 1
        ? model.together(each, fingers[place] ?? 0)[node]
        : model.intervals.table(each)[node],
    );
    return outlasts * convolved(tables, steps);
  });
}

/** For each node, P(intervals of these kinds take no longer together), whether keys are still down or not. */
export function intervalsWithin(
  model: Model,
  kinds: readonly IntervalKind[],
  windowMs: number,
): readonly number[] {
  const steps = Math.min(STEPS - 1, windowMs / STEP_MS);
  return NODES.map((_, node) => {
    const tables = kinds.map((kind) => model.intervals.table(kind)[node]);
    return tables.length === 1 ? at(tables[0] ?? EMPTY, steps) : convolved(tables, steps);
  });
}

const EMPTY = new Float64Array(STEPS);

/** P(sum of times ≤ a number of steps) out of their distribution functions. */
function convolved(tables: readonly (Float64Array | undefined)[], steps: number): number {
  const last = Math.floor(steps);
  let sum: Float64Array = tables.at(-1) ?? EMPTY;
  for (const table of tables.slice(1, -1).reverse()) sum = convolution(table ?? EMPTY, sum, last + 1);
  const first = tables[0] ?? EMPTY;
  let whole = 0;
  for (let step = 1; step <= last; step++)
    whole += ((first[step] ?? 0) - (first[step - 1] ?? 0)) * at(sum, steps - step + 0.5);
  return whole;
}

function convolution(one: Float64Array, other: Float64Array, steps: number): Float64Array {
  const sum = new Float64Array(STEPS);
  for (let to = 1; to <= steps && to < STEPS; to++) {
    let total = 0;
    for (let step = 1; step <= to; step++)
      total += ((one[step] ?? 0) - (one[step - 1] ?? 0)) * at(other, to - step + 0.5);
    sum[to] = total;
  }
  return sum;
}

function at(table: Float64Array, step: number): number {
  const low = Math.floor(step);
  const from = table[low] ?? 0;
  return from + ((table[low + 1] ?? from) - from) * (step - low);
}
