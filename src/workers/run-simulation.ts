import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostTable } from '../core/host/host-table.ts';
import type { Keymap } from '../core/keymap/types.ts';
import type { RunCounts } from '../core/needs/counts-runs.ts';
import type { Person } from '../core/typist/person.ts';
import { pressRunsOf } from '../core/typist/press-runs.ts';
import { type Simulation, type SimulationBudget, simulate } from '../core/typist/simulate.ts';

/** What a simulation is made of. */
export interface SimulationRequest {
  readonly keymap: Keymap;
  readonly table: HostTable;
  readonly counts: RunCounts;
  readonly person: Person;
  readonly budget: SimulationBudget;
}

/** How often progress is told in a whole run. */
const TELLINGS = 50;

/** Simulates typists at a design; tells the words done about fifty times. */
export function runSimulation(
  { keymap, table, counts, person, budget }: SimulationRequest,
  tell: (doneWords: number) => void,
): Simulation {
  const runs = pressRunsOf(keymap, hostFromTable(table), counts);
  let told = 0;
  return simulate(keymap, runs, counts, person, budget, (done) => {
    if (done - told >= budget.words / TELLINGS) {
      told = done;
      tell(done);
    }
    return false;
  });
}
