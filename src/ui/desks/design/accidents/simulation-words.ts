import type { LegendSource } from '../../../../core/host/legend.ts';
import type { Rate } from '../../../../core/typist/interval-of-rate.ts';
import type { Offence, Overview } from '../../../../core/typist/overview.ts';
import type { Simulation } from '../../../../core/typist/simulate.ts';
import { plainNumber } from '../../../../core/typist/uncertainty.ts';
import { idOfOffender, offenderInWords, pressInWords } from './accident-rows.ts';

/** One thing that went off in a simulation, beside its estimate. */
export interface SimulatedRow {
  readonly id: string;
  readonly name: string;
  readonly estimate: string;
  /** "8.1 (6.9 to 9.2)". */
  readonly simulated: string;
  /** Whether the closed form lies outside the interval. */
  readonly isOutside: boolean;
}

/** A table of the simulation: what its figures are of. */
export interface SimulatedTable {
  readonly of: 'misfires' | 'misses' | 'holds' | 'delay';
  readonly heading: string;
  readonly rows: readonly SimulatedRow[];
}

const LEAST = 0.05;

/** What was simulated, beside what was estimated on the same design: a table each for what there is of it. */
export function simulatedTables(
  simulation: Simulation,
  overview: Overview,
  source: LegendSource,
): readonly SimulatedTable[] {
  const { offences } = overview;
  const of = (rate: (each: OfOffender) => Rate | null, estimate: (offence: Offence) => number | null) =>
    rowsOf(
      offences.map((offence) => {
        const own = simulatedOf(simulation, offence);
        return {
          id: idOfOffender(offence.offender),
          name: offenderInWords(offence.offender, source),
          estimate: estimate(offence),
          rate: own === undefined ? null : rate(own),
        };
      }),
    );
  const tables: readonly SimulatedTable[] = [
    {
      of: 'misfires',
      heading: 'Misfires in 1,000 words',
      rows: of(
        (each) => each.misfiresPer1000Words,
        ({ misfires }) => misfires,
      ),
    },
    {
      of: 'misses',
      heading: 'Misses in 1,000 uses',
      rows: of(
        (each) => each.missesPer1000Uses,
        ({ misses }) => misses,
      ),
    },
    {
      of: 'holds',
      heading: 'Chords that come as their hold, in 1,000 taps',
      rows: of(
        (each) => ('holdsPer1000Uses' in each ? each.holdsPer1000Uses : null),
        ({ holds }) => holds,
      ),
    },
    {
      of: 'delay',
      heading: 'Waits before it appears, ms on average',
      rows: delayRows(simulation, overview, source),
    },
  ];
  return tables.filter(({ of: what, rows }) => what === 'misfires' || rows.length > 0);
}

type OfOffender = Simulation['chords'][number] | Simulation['holds'][number];

function simulatedOf({ chords, holds }: Simulation, { offender }: Offence): OfOffender | undefined {
  return offender.what === 'chord'
    ? chords.find(({ id }) => id === offender.chord)
    : holds.find(({ key, layer }) => key === offender.key && layer === offender.layer);
}

interface Pair {
  readonly id: string;
  readonly name: string;
  readonly estimate: number | null;
  /** Null where it was not looked at. */
  readonly rate: Rate | null;
}

/** The worst first; what neither found is left out. */
function rowsOf(pairs: readonly Pair[]): readonly SimulatedRow[] {
  return pairs
    .flatMap(({ rate, ...pair }) => (rate === null ? [] : [{ ...pair, rate }]))
    .filter(({ estimate, rate }) => (estimate ?? 0) >= LEAST || rate.rate >= LEAST)
    .toSorted((one, other) => other.rate.rate - one.rate.rate)
    .map(({ id, name, estimate, rate }) => ({
      id,
      name,
      estimate: estimate === null ? 'none' : rateText(estimate),
      simulated: `${rateText(rate.rate)} (${rateText(rate.low)} to ${rateText(rate.high)})`,
      isOutside: estimate !== null && (estimate < rate.low || estimate > rate.high),
    }));
}

/** The longest waits alone: every letter that takes part in a chord has one. */
const MOST_DELAYS = 12;

function delayRows({ delay }: Simulation, overview: Overview, source: LegendSource): readonly SimulatedRow[] {
  const pairs = overview.delay.map(({ key, layer, meanMs }): Pair => {
    const own = delay.find((each) => each.key === key && each.layer === layer);
    return {
      id: `delay ${layer} ${key}`,
      name: pressInWords({ key, layer }, source),
      estimate: meanMs,
      rate: own === undefined ? null : { rate: own.meanMs, low: own.meanLowMs, high: own.meanHighMs },
    };
  });
  return rowsOf(pairs).slice(0, MOST_DELAYS);
}

/** How many of the rows lie outside, and what to make of it. */
export function outsideInWords(tables: readonly SimulatedTable[]): string {
  const rows = tables.flatMap((table) => table.rows);
  const outside = rows.filter(({ isOutside }) => isOutside).length;
  if (rows.length === 0) return 'Nothing went off.';
  if (outside === 0) return 'All estimates lie within the simulation’s intervals.';
  const which = outside === 1 ? '1 estimate lies' : `${outside} estimates lie`;
  return `${which} outside the simulation’s interval: where the two differ, the simulation is right about the model.`;
}

/** What a simulation was of: words, typists and the seed that gives it again. */
export function simulationInWords({ words, typists, seed }: Simulation): string {
  return `${words.toLocaleString('en')} words by ${typists.toLocaleString('en')} typists, seed ${seed}; intervals hold 95 %.`;
}

function rateText(rate: number): string {
  return rate < LEAST ? '0' : plainNumber(rate);
}
