import { randomLcg, randomNormal } from 'd3-random';
import type { CompiledBinding } from '../engine/compiled.ts';
import { NODES } from './distributions.ts';
import { fingerNumber } from './dwells.ts';
import { STEP_MS, STEPS } from './intervals.ts';
import type { Model } from './model.ts';
import { ANY_LETTERS } from './pair-class.ts';
import type { Situation } from './situation.ts';
import { onsetSdMs } from './spread.ts';

/** What of a chord decides whether its firing becomes its hold. */
export interface ChordThatHolds {
  readonly keys: readonly number[];
  readonly windowMs: number;
  /** The firing comes up with its last key and not with its first. */
  readonly lastUp: boolean;
  readonly timing: Pick<CompiledBinding, 'holdAfterMs' | 'holdBy' | 'tapIfAlone'>;
}

/** Onsets and the press that follows are drawn so often; over dwells it is summed, so that few are enough. */
const DRAWS = 600;
const SEED = 0.5;

/**
 * P(a chord that is meant as a tap comes as its hold), of those that fire: its keys stay down until a hold is decided.
 * That a press follows as one letter follows another, and is down as long as the typist's mean, is an assumption. Over
 * fixed draws: the same design gives the same.
 */
export function chordHoldShare({ model, runs }: Situation, chord: ChordThatHolds): number {
  const seats = chord.keys.flatMap((key) => runs.seats[key] ?? []);
  const fingers = seats.map(fingerNumber);
  const random = randomLcg(SEED);
  const onset = randomNormal.source(random)(0, onsetSdMs(seats, model.person.spreadFactor));
  const next = nextPressOf(model);
  let fired = 0;
  let held = 0;
  for (let draw = 0; draw < DRAWS; draw++) {
    const onsets = fingers.map(() => onset());
    const first = Math.min(...onsets);
    const after = onsets.map((each) => each - first);
    const last = Math.max(...after);
    const nextAt = last + timeUnder(next, random());
    const nextUp = nextAt + model.dwells.quantile(0, random());
    if (last > chord.windowMs) continue;
    const decided = Math.max(last, decidedAt(chord.timing, nextAt, nextUp));
    for (const [node, { weight }] of NODES.entries()) {
      const down = (t: number) =>
        after.map((since, at) => model.dwells.survivalAt(fingers[at] ?? 0, node, t - since));
      const whole = down(last).reduce(product, 1);
      fired += weight * whole;
      held +=
        weight * (chord.lastUp ? whole - allUp(down(last), down(decided)) : down(decided).reduce(product, 1));
    }
  }
  return fired === 0 ? 0 : held / fired;
}

/** When a firing that is still down becomes a hold (S5 to S8, S14), given when the next key comes down and up again, ms. */
function decidedAt(
  { holdAfterMs, holdBy, tapIfAlone }: ChordThatHolds['timing'],
  nextAt: number,
  nextUp: number,
): number {
  const byTime = tapIfAlone ? Math.max(holdAfterMs, nextAt) : holdAfterMs;
  if (holdBy === 'time-only') return byTime;
  return Math.min(byTime, holdBy === 'press-inside' ? nextAt : nextUp);
}

const product = (one: number, other: number) => one * other;

/** P(all that are down at one time are up at a later one). */
function allUp(before: readonly number[], later: readonly number[]): number {
  return before.reduce((all, down, at) => all * (down - (later[at] ?? 0)), 1);
}

/** P(the next letter comes within t) at t = 0, 2, 4 … ms, over the population. */
function nextPressOf(model: Model): Float64Array {
  const tables = model.intervals.table(ANY_LETTERS);
  return Float64Array.from({ length: STEPS }, (_, step) =>
    NODES.reduce((sum, { weight }, node) => sum + weight * (tables[node]?.[step] ?? 0), 0),
  );
}

/** The time under which a share lies, ms; beyond the table it is as good as never. */
function timeUnder(table: Float64Array, share: number): number {
  const step = table.findIndex((each) => each >= share);
  return step < 0 ? Number.POSITIVE_INFINITY : step * STEP_MS;
}
