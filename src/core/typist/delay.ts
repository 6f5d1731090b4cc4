import type { ChordToWatch } from './chord-misfires.ts';
import { NODES, skewedCdf } from './distributions.ts';
import type { HoldTiming } from './hold-misfires.ts';
import { STEP_MS, STEPS } from './intervals.ts';
import { AFTER_HOLD, type IntervalKind } from './pair-class.ts';
import { HOLD_LAG_MS } from './parameters.ts';
import type { Situation } from './situation.ts';

/** How long a tap waits before it appears, ms. */
export interface Waiting {
  readonly meanMs: number;
  readonly p95Ms: number;
}

/**
 * The wait of a press that is meant as a tap and comes as one: for chords that it could begin, and for its own hold.
 * Null where it waits for neither.
 */
export function waitOf(
  situation: Situation,
  press: number,
  chords: readonly ChordToWatch[],
  hold: HoldTiming | null,
): Waiting | null {
  const own = situation.runs.presses[press];
  const [key = -1] = own?.keys ?? [];
  const possible = chords.filter(
    ({ keys, layers }) => keys.includes(key) && (layers & (1 << (own?.layer ?? 0))) !== 0,
  );
  if (own === undefined || (possible.length === 0 && hold === null)) return null;
  const after = waitsAfter(situation, press, possible);
  const settle = settleSurvival(situation, press, hold, after);
  const { mayGather, gather } = gatherOf(situation, press, possible, after);
  const maySettle = hold === null ? 0 : quietShare(situation, press, hold.quietBeforeMs);
  const both = Math.min(mayGather, maySettle);
  const survival = gather.map(
    (waits, step) =>
      both * Math.max(waits, settle[step] ?? 0) +
      (mayGather - both) * waits +
      (maySettle - both) * (settle[step] ?? 0),
  );
  return waitingOf(survival);
}

/** P(the press waits for any chord), and, if it does, P(it still waits) at t = 0, 2, 4 … ms. */
function gatherOf(
  situation: Situation,
  press: number,
  possible: readonly ChordToWatch[],
  next: NextPress,
): { readonly mayGather: number; readonly gather: readonly number[] } {
  const gather: number[] = Array(STEPS).fill(0);
  const levels = [...new Set(possible.map(({ quietBeforeMs }) => quietBeforeMs))].sort(
    (one, other) => one - other,
  );
  const reached = levels.map((quiet) => quietShare(situation, press, quiet));
  const [mayGather = 0] = reached;
  if (mayGather === 0) return { mayGather, gather };
  for (const [at, quiet] of levels.entries()) {
    // So much quiet and no more: only the chords that ask for no more are possible.
    const share = ((reached[at] ?? 0) - (reached[at + 1] ?? 0)) / mayGather;
    const live = possible.filter(({ quietBeforeMs }) => quietBeforeMs <= quiet);
    for (const [step, waits] of gatherSurvival(situation, press, live, next).entries())
      gather[step] = (gather[step] ?? 0) + share * waits;
  }
  return { mayGather, gather };
}

/** P(the next press has come), at t = 0, 2, 4 … ms: of any key, of a key that no possible chord holds, of one of the same hand. */
interface NextPress {
  readonly any: Float64Array;
  readonly foreign: Float64Array;
  readonly sameHand: Float64Array;
}

function waitsAfter(
  { contexts, kinds, model, runs }: Situation,
  press: number,
  possible: readonly ChordToWatch[],
): NextPress {
  const any = new Float64Array(STEPS);
  const foreign = new Float64Array(STEPS);
  const sameHand = new Float64Array(STEPS);
  const own = runs.seats[runs.presses[press]?.keys[0] ?? -1];
  const after = contexts.after(press);
  const all = after.reduce((sum, { per1000Words }) => sum + per1000Words, 0);
  for (const { press: next, per1000Words } of after) {
    const [key = -1] = runs.presses[next]?.keys ?? [];
    const seat = runs.seats[key];
    const isForeign = !possible.some(({ keys }) => keys.includes(key));
    const isSame = own !== undefined && seat?.left === own.left && seat.finger > 0 && own.finger > 0;
    const table = meanTable(model, kinds.kind(press, next));
    for (let step = 0; step < STEPS; step++) {
      const within = (per1000Words / all) * (table[step] ?? 0);
      any[step] = (any[step] ?? 0) + within;
      if (isForeign) foreign[step] = (foreign[step] ?? 0) + within;
      if (isSame) sameHand[step] = (sameHand[step] ?? 0) + within;
    }
  }
  return { any, foreign, sameHand };
}

const means = new WeakMap<Situation['model'], Map<IntervalKind, Float64Array>>();

/** P(interval ≤ t) over the population at t = 0, 2, 4 … ms. */
function meanTable(model: Situation['model'], kind: IntervalKind): Float64Array {
  const tables = means.get(model) ?? new Map<IntervalKind, Float64Array>();
  means.set(model, tables);
  const known = tables.get(kind);
  if (known !== undefined) return known;
  const table = new Float64Array(STEPS);
  if (kind === AFTER_HOLD)
    for (let step = 0; step < STEPS; step++) table[step] = skewedCdf(step * STEP_MS, HOLD_LAG_MS);
  else
    for (const [node, { weight }] of NODES.entries())
      for (let step = 0; step < STEPS; step++)
        table[step] = (table[step] ?? 0) + weight * (model.intervals.table(kind)[node]?.[step] ?? 0);
  tables.set(kind, table);
  return table;
}

/** P(quiet enough before the press), over the population. */
function quietShare({ contexts, kinds, model }: Situation, press: number, quietMs: number): number {
  if (quietMs === 0) return 1;
  let all = 0;
  let quiet = 0;
  for (const { press: before, per1000Words } of contexts.before([press])) {
    all += per1000Words;
    const table = meanTable(model, kinds.kind(before, press));
    quiet += per1000Words * (1 - (table[Math.min(STEPS - 1, Math.round(quietMs / STEP_MS))] ?? 1));
  }
  return all === 0 ? 1 : quiet / all;
}

/** P(still waiting for a chord): neither its timer, nor the key's own release, nor a key that fits no chord has come. */
function gatherSurvival(
  { kinds, model }: Situation,
  press: number,
  possible: readonly ChordToWatch[],
  next: NextPress,
): number[] {
  const due = Math.max(0, ...possible.map(({ windowMs }) => windowMs));
  const down = model.dwells.table(kinds.fingers[press] ?? 0);
  return Array.from(down, (isDown, step) =>
    step * STEP_MS < due ? isDown * (1 - (next.foreign[step] ?? 0)) : 0,
  );
}

/** P(a press that comes as a tap still waits for its hold): until its release, or the next press of the hand where that settles it. */
function settleSurvival(
  { kinds, model }: Situation,
  press: number,
  both: HoldTiming | null,
  next: NextPress,
): number[] {
  const down = model.dwells.table(kinds.fingers[press] ?? 0);
  if (both === null) return Array.from(down, () => 0);
  const { holdAfterMs, holdBy, sameHandTaps, tapIfAlone } = both;
  const last = Math.min(STEPS - 1, Math.floor(holdAfterMs / STEP_MS));
  const taps = new Float64Array(STEPS);
  let all = 0;
  // Held alone it is a tap after its time too (S14).
  for (let step = 1; step <= (tapIfAlone ? STEPS - 1 : last); step++) {
    const released = (down[step - 1] ?? 0) - (down[step] ?? 0);
    const sameHand = sameHandTaps ? (next.sameHand[step] ?? 0) : 0;
    const other = (next.any[step] ?? 0) - sameHand;
    const isLate = step > last;
    const calm = holdBy === 'press-inside' || isLate ? 1 - other - sameHand : 1 - sameHand;
    const tapped =
      sameHandTaps && !isLate ? (sameHand - (next.sameHand[step - 1] ?? 0)) * (down[step] ?? 0) : 0;
    taps[step] = released * calm + tapped;
    all += taps[step] ?? 0;
  }
  let waits = 1;
  return Array.from(taps, (mass) => {
    waits -= all === 0 ? 1 : mass / all;
    return Math.max(0, waits);
  });
}

function waitingOf(survival: readonly number[]): Waiting {
  let meanMs = 0;
  for (const [step, waits] of survival.entries())
    if (step > 0) meanMs += (STEP_MS * (waits + (survival[step - 1] ?? 0))) / 2;
  const late = survival.findIndex((waits) => waits <= 0.05);
  return { meanMs, p95Ms: (late === -1 ? STEPS - 1 : late) * STEP_MS };
}
