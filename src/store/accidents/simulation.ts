import { proxy, wrap } from 'comlink';
import { useStore } from 'zustand';
import type { Simulating } from '../../workers/simulate.worker.ts';
import { makeSimulation, type SimulationState, type StartSimulation } from './make-simulation.ts';

/** Simulates in a worker of its own, which is simply ended when it is broken off. */
const simulateInWorker: StartSimulation = (request, tell) => {
  const worker = new Worker(new URL('../../workers/simulate.worker.ts', import.meta.url), { type: 'module' });
  const failed = new Promise<never>((_, reject) => {
    worker.addEventListener('error', () => reject(new Error('The simulation could not be run.')));
  });
  const result = wrap<Simulating>(worker).run(request, proxy(tell));
  return { result: Promise.race([result, failed]), stop: () => worker.terminate() };
};

const simulation = makeSimulation(simulateInWorker);

/** The page's one simulation. */
export function useSimulation(): SimulationState {
  return useStore(simulation);
}
