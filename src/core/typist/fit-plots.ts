import { gammaSurvival, logLogisticCdf } from './distributions.ts';
import { fingerDwellMs } from './dwells.ts';
import { ratioOfGroup } from './fit-intervals.ts';
import { STEP_MS, STEPS } from './intervals.ts';
import { FROM_THUMB_GROUP, type Measured, type MeasuredInterval, TO_THUMB_GROUP } from './measured.ts';
import { Model } from './model.ts';
import { FROM_THUMB, type IntervalKind, TO_THUMB } from './pair-class.ts';
import { ONSET_SD_MS } from './parameters.ts';
import type { Person } from './person.ts';
import { spreadWithin } from './spread.ts';

/** Counts of times by steps from 0 on, and how many of them the fitted model expects in each. */
export interface FitPlot {
  readonly stepMs: number;
  readonly counts: readonly number[];
  readonly expected: readonly number[];
  /** Times beyond the last step. */
  readonly beyond: number;
}

const INTERVAL_STEP = { ms: 20, count: 30 };
const DWELL_STEP = { ms: 10, count: 30 };
const SPREAD_STEP = { ms: 10, count: 15 };

/** Intervals of all kinds, and what this person is expected to have of the same kinds. */
export function intervalPlot({ intervals }: Measured, person: Person): FitPlot {
  const model = new Model({ ...person, parameters: { ...person.parameters, betweenLnIki: 0 } });
  const alike = grouped(intervals, ({ group, band }) => `${group} ${band}`);
  const shares = [...alike.values()].map((same) => ({
    count: same.length,
    within: sharesOf(model, same[0]),
  }));
  return plotOf(
    intervals.map(({ ms }) => ms),
    INTERVAL_STEP,
    (t) => shares.reduce((sum, { count, within }) => sum + count * within(t), 0),
  );
}

/** P(interval ≤ t) of a kind; where it is not known how practised the pair is, its class alone. */
function sharesOf(model: Model, of: MeasuredInterval | undefined): (t: number) => number {
  const { parameters } = model.person;
  if (of === undefined) return () => 0;
  if (of.band === null && of.group < TO_THUMB_GROUP)
    return (t) => logLogisticCdf(t, parameters.alphaMs * ratioOfGroup(parameters, of.group), parameters.beta);
  const [table] = model.intervals.tablesFor(kindOf(of), [0]);
  return (t) => table?.[Math.min(STEPS - 1, Math.round(t / STEP_MS))] ?? 0;
}

function kindOf({ group, band }: MeasuredInterval): IntervalKind {
  if (group === TO_THUMB_GROUP) return TO_THUMB;
  return group === FROM_THUMB_GROUP ? FROM_THUMB : group * 4 + (band ?? 0);
}

/** Dwells of all fingers, and what this person is expected to have with the same fingers. */
export function dwellPlot({ dwells }: Measured, { parameters }: Person): FitPlot {
  const { dwellMeanMs, dwellWithinMs, dwellRatio } = parameters;
  const alike = grouped(dwells, ({ finger }) => finger);
  return plotOf(
    dwells.map(({ ms }) => ms),
    DWELL_STEP,
    (t) =>
      [...alike].reduce(
        (sum, [finger, same]) =>
          sum +
          same.length * (1 - gammaSurvival(t, fingerDwellMs(finger, dwellMeanMs, dwellRatio), dwellWithinMs)),
        0,
      ),
  );
}

/** First to last key of the chords, and what this person is expected to have over as many keys and hands. */
export function spreadPlot({ chords }: Measured, { spreadFactor }: Person): FitPlot {
  return plotOf(
    chords.map(({ onsetsMs }) => onsetsMs.at(-1) ?? 0),
    SPREAD_STEP,
    (t) =>
      chords.reduce((sum, { hands, onsetsMs }) => {
        const sd = (hands === 'one' ? ONSET_SD_MS.oneHand : ONSET_SD_MS.twoHands) * spreadFactor;
        return sum + spreadWithin(t, onsetsMs.length, sd);
      }, 0),
  );
}

function grouped<Item, Name>(items: readonly Item[], nameOf: (item: Item) => Name): Map<Name, Item[]> {
  const groups = new Map<Name, Item[]>();
  for (const item of items) {
    const name = nameOf(item);
    const group = groups.get(name);
    if (group === undefined) groups.set(name, [item]);
    else group.push(item);
  }
  return groups;
}

function plotOf(
  times: readonly number[],
  step: { readonly ms: number; readonly count: number },
  expectedUpTo: (t: number) => number,
): FitPlot {
  const counts: number[] = Array(step.count).fill(0);
  let beyond = 0;
  for (const time of times) {
    const at = Math.floor(time / step.ms);
    if (at < step.count) counts[at] = (counts[at] ?? 0) + 1;
    else beyond++;
  }
  const expected = counts.map((_, at) => expectedUpTo((at + 1) * step.ms) - expectedUpTo(at * step.ms));
  return { stepMs: step.ms, counts, expected, beyond };
}
