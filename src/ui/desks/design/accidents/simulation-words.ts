import type { LegendSource } from '../../../../core/host/legend.ts';
import type { Rate } from '../../../../core/typist/interval-of-rate.ts';
import type { Overview } from '../../../../core/typist/overview.ts';
import type { Simulation } from '../../../../core/typist/simulate.ts';
import { plainNumber } from '../../../../core/typist/uncertainty.ts';
import { idOfOffender, offenderInWords } from './accident-rows.ts';

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

const LEAST = 0.05;

/** What was simulated, beside what was estimated on the same design: the worst first; what neither found is left out. */
export function simulatedRows(
  simulation: Simulation,
  { offences }: Overview,
  source: LegendSource,
): readonly SimulatedRow[] {
  const rates = new Map<string, Rate>([
    ...simulation.chords.map(
      ({ id, misfiresPer1000Words }) => [`chord ${id}`, misfiresPer1000Words] as const,
    ),
    ...simulation.holds.map(
      ({ key, layer, misfiresPer1000Words }) => [`hold ${layer} ${key}`, misfiresPer1000Words] as const,
    ),
  ]);
  return offences
    .flatMap(({ offender, misfires }) => {
      const rate = rates.get(idOfOffender(offender));
      return rate === undefined ? [] : [{ offender, misfires, rate }];
    })
    .filter(({ misfires, rate }) => (misfires ?? 0) >= LEAST || rate.rate >= LEAST)
    .toSorted((one, other) => other.rate.rate - one.rate.rate)
    .map(({ offender, misfires, rate }) => ({
      id: idOfOffender(offender),
      name: offenderInWords(offender, source),
      estimate: misfires === null ? 'none' : rateText(misfires),
      simulated: `${rateText(rate.rate)} (${rateText(rate.low)} to ${rateText(rate.high)})`,
      isOutside: misfires !== null && (misfires < rate.low || misfires > rate.high),
    }));
}

/** How many of the rows lie outside, and what to make of it. */
export function outsideInWords(rows: readonly SimulatedRow[]): string {
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
