import type { CompiledBinding } from '../engine/compiled.ts';
import type { Cause } from './chord-misfires.ts';
import { NODES, skewedCdf } from './distributions.ts';
import { STEP_MS, STEPS } from './intervals.ts';
import { ANY_LETTERS } from './pair-class.ts';
import { HOLD_DOWN_MS, HOLD_LAG_MS } from './parameters.ts';
import type { Situation } from './situation.ts';
import { intervalsWithin } from './together.ts';

/** The timing of a hold/tap key, ms where durations. */
export type HoldTiming = Pick<
  CompiledBinding,
  'holdAfterMs' | 'holdBy' | 'quietBeforeMs' | 'againWithinMs' | 'sameHandTaps' | 'tapIfAlone'
>;

/** Misfires of a hold/tap press in 1,000 words, by the press that follows; `press` is meant as a tap. */
export function holdMisfires(situation: Situation, press: number, timing: HoldTiming): readonly Cause[] {
  const { kinds } = situation;
  const byNext = new Map<number, readonly number[]>();
  const byPrevious = new Map<number, readonly number[]>();
  const sums = new Map<number, number>();
  let known = 0;
  for (const { before, after, per1000Words } of around(situation, press)) {
    const holds = byNext.get(after) ?? holdShares(situation, press, after, timing);
    const open = byPrevious.get(before) ?? openShares(situation, before, press, timing);
    byNext.set(after, holds);
    byPrevious.set(before, open);
    let share = 0;
    for (const [node, { weight }] of NODES.entries())
      share += weight * (holds[node] ?? 0) * (open[node] ?? 1);
    sums.set(after, (sums.get(after) ?? 0) + share * per1000Words);
    known += per1000Words;
  }
  const all = known === 0 ? 0 : (kinds.per1000[press] ?? 0) / known;
  return [...sums].map(([after, sum]) => ({ presses: [press, after], per1000Words: sum * all }));
}

const UNKNOWN = -1;

/** The triples around a press, or its pairs where no triple is known. */
function around({ contexts }: Situation, press: number) {
  const triples = contexts.around(press);
  if (triples.length > 0) return triples;
  return contexts
    .after(press)
    .map(({ press: after, per1000Words }) => ({ before: UNKNOWN, after, per1000Words }));
}

/** For each node, P(the press is not a tap at once): quiet before it, and not again too soon. */
function openShares(
  { kinds, model, runs }: Situation,
  before: number,
  press: number,
  timing: HoldTiming,
): readonly number[] {
  const { quietBeforeMs, againWithinMs } = timing;
  const kind = before === UNKNOWN ? ANY_LETTERS : kinds.kind(before, press);
  const isAgain =
    againWithinMs > 0 &&
    before !== UNKNOWN &&
    runs.presses[before]?.keys[0] === runs.presses[press]?.keys[0] &&
    runs.presses[before]?.asHold === false;
  return NODES.map((_, node) => {
    const quiet = quietBeforeMs === 0 ? 1 : 1 - model.intervals.within(kind, node, quietBeforeMs);
    if (!isAgain) return quiet;
    // Soon again: the interval is within the first dwell and the time allowed together.
    const down = model.dwells.table(kinds.fingers[press] ?? 0);
    let soon = 0;
    for (let step = 1; step < STEPS; step += 5) {
      const mass = (down[step - 1] ?? 0) - (down[step + 4] ?? 0);
      soon += mass * model.intervals.within(kind, node, againWithinMs + (step + 1.5) * STEP_MS);
    }
    return Math.min(quiet, 1 - soon);
  });
}

/** For each node, P(an open press that was meant as a tap becomes a hold), given what comes next. */
function holdShares(
  { kinds, model, runs }: Situation,
  press: number,
  next: number,
  timing: HoldTiming,
): readonly number[] {
  const { holdAfterMs, holdBy, sameHandTaps, tapIfAlone } = timing;
  const finger = kinds.fingers[press] ?? 0;
  const kind = kinds.kind(press, next);
  const late = model.dwells.survival(finger, holdAfterMs);
  const together = model.together(kind, finger);
  const isTapped =
    sameHandTaps && isSameHand(runs.seats, runs.presses[press]?.keys, runs.presses[next]?.keys);
  return NODES.map((_, node) => {
    const within = model.intervals.within(kind, node, holdAfterMs);
    const table = together[node];
    const inside = table?.[Math.min(STEPS - 1, Math.round(holdAfterMs / STEP_MS))] ?? 0;
    // The next press comes after the time: with `tapIfAlone` it is a hold only if it still finds the key down (S14).
    const after = tapIfAlone ? Math.max(0, (table?.[STEPS - 1] ?? 0) - inside) : late * (1 - within);
    const byTime = tapIfAlone ? late * within + after : late;
    if (isTapped) return after;
    if (holdBy === 'time-only') return byTime;
    if (holdBy === 'press-inside') return Math.min(1, after + inside);
    if (runs.presses[next]?.held === true) return byTime;
    return byTime + model.dwells.nested(kind, node, finger, kinds.fingers[next] ?? 0) * (1 - late);
  });
}

function isSameHand(
  seats: Situation['runs']['seats'],
  one?: readonly number[],
  other?: readonly number[],
): boolean {
  if (one?.length !== 1 || other?.length !== 1) return false;
  const [a, b] = [seats[one[0] ?? 0], seats[other[0] ?? 0]];
  return a !== undefined && b !== undefined && a.left === b.left && a.finger > 0 && b.finger > 0;
}

/**
 * P(a key meant as a hold comes as a tap). Deliberate holds are those of Shift and a letter in the sample; that the pause
 * before one is like any interval between letters is an assumption.
 */
export function holdMissShare({ model, runs, kinds }: Situation, key: number, timing: HoldTiming): number {
  const { holdAfterMs, holdBy, quietBeforeMs, againWithinMs, sameHandTaps } = timing;
  const tooSoon = quietBeforeMs === 0 ? 0 : anyWithin(model, quietBeforeMs);
  const short = skewedCdf(holdAfterMs, HOLD_DOWN_MS);
  const letterLater = 1 - model.person.parameters.letterUpFirst;
  const alone = holdBy === 'press-inside' ? 0 : holdBy === 'time-only' ? short : short * letterLater;
  const byHand = sameHandTaps ? sameHandShare(runs, kinds, key) : 0;
  const missed = byHand * skewedCdf(holdAfterMs, HOLD_LAG_MS) + (1 - byHand) * alone;
  const atOnce = Math.max(tooSoon, againShare(runs, kinds, model, key, againWithinMs));
  return atOnce + (1 - atOnce) * missed;
}

/** P(one of the presses before was a tap of the key itself, and not long ago). */
function againShare(
  { presses }: Situation['runs'],
  { per1000, fingers }: Situation['kinds'],
  model: Situation['model'],
  key: number,
  againWithinMs: number,
): number {
  if (againWithinMs === 0) return 0;
  let own = 0;
  let all = 0;
  for (const [number, press] of presses.entries()) {
    const count = per1000[number] ?? 0;
    all += count;
    if (press.keys[0] !== key || press.both === null || press.asHold) continue;
    // The interval is within the tap's dwell, taken at its median, and the time allowed together.
    const dwell = model.dwells.table(fingers[number] ?? 0).findIndex((down) => down < 0.5) * STEP_MS;
    own += count * soonShare(model, againWithinMs + dwell);
  }
  return all === 0 ? 0 : own / all;
}

/** How many presses back a tap of the key may lie and still count as soon again. */
const PRESSES_BACK = 3;
const soonShares = new WeakMap<Situation['model'], Map<number, number>>();

/** How many of the last presses lie within a time, on average over the population. */
function soonShare(model: Situation['model'], ms: number): number {
  const known = soonShares.get(model) ?? new Map<number, number>();
  soonShares.set(model, known);
  const found = known.get(ms);
  if (found !== undefined) return found;
  let share = 0;
  for (let back = 1; back <= PRESSES_BACK; back++) {
    const within = intervalsWithin(model, Array(back).fill(ANY_LETTERS), ms);
    share += NODES.reduce((sum, { weight }, node) => sum + weight * (within[node] ?? 0), 0);
  }
  known.set(ms, share);
  return share;
}

/** P(any interval between letters ≤ t) over the population. */
export function anyWithin(model: Situation['model'], t: number): number {
  return NODES.reduce(
    (sum, { weight }, node) => sum + weight * model.intervals.within(ANY_LETTERS, node, t),
    0,
  );
}

/** Share of the text's presses of fingers that are of the key's hand; 0 for a thumb's key. */
function sameHandShare(
  { presses, seats }: Situation['runs'],
  { per1000 }: Situation['kinds'],
  key: number,
): number {
  const own = seats[key];
  if (own === undefined || own.finger === 0) return 0;
  let same = 0;
  let all = 0;
  for (const [number, press] of presses.entries()) {
    const seat = seats[press.keys[0] ?? 0];
    if (seat === undefined || seat.finger === 0 || press.held) continue;
    all += per1000[number] ?? 0;
    if (seat.left === own.left) same += per1000[number] ?? 0;
  }
  return all === 0 ? 0 : same / all;
}
