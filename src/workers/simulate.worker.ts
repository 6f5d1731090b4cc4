import { expose } from 'comlink';
import type { Simulation } from '../core/typist/simulate.ts';
import { runSimulation, type SimulationRequest } from './run-simulation.ts';

/** What the page can ask of the worker. It is ended to break a simulation off. */
export interface Simulating {
  run(request: SimulationRequest, tell: (doneWords: number) => void): Simulation;
}

const simulating: Simulating = { run: runSimulation };

expose(simulating);
