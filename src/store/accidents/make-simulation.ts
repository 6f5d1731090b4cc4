import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Simulation } from '../../core/typist/simulate.ts';
import type { SimulationRequest } from '../../workers/run-simulation.ts';

/** A simulation that is going on and can be broken off. */
export interface RunningSimulation {
  readonly result: Promise<Simulation>;
  stop(): void;
}

/** Starts a simulation somewhere else than on the page. */
export type StartSimulation = (
  request: SimulationRequest,
  tell: (doneWords: number) => void,
) => RunningSimulation;

export interface SimulationState {
  /** Words typed so far, and in all; null while none is going on. */
  readonly running: { readonly done: number; readonly words: number } | null;
  /** The last one that came to its end, and what it was of. */
  readonly last: { readonly of: SimulationRequest; readonly result: Simulation } | null;
  readonly failed: string | null;
  /** Starts one in place of any that is going on; the last result stays until it ends. */
  run(request: SimulationRequest): Promise<void>;
  /** Breaks off; the last result stays. */
  cancel(): void;
}

/** One simulation at a time. */
export function makeSimulation(start: StartSimulation): StoreApi<SimulationState> {
  /** Whatever comes from an earlier one is late. */
  let turn = 0;
  let running: RunningSimulation | null = null;
  return createStore<SimulationState>((set) => {
    const breakOff = () => {
      turn++;
      running?.stop();
      running = null;
    };
    return {
      running: null,
      last: null,
      failed: null,
      cancel: () => {
        breakOff();
        set({ running: null });
      },
      run: async (request) => {
        breakOff();
        const mine = turn;
        const { words } = request.budget;
        set({ running: { done: 0, words }, failed: null });
        try {
          running = start(request, (done) => {
            if (turn === mine) set({ running: { done, words } });
          });
          const result = await running.result;
          if (turn === mine) set({ last: { of: request, result } });
        } catch (error) {
          if (turn === mine) set({ failed: error instanceof Error ? error.message : String(error) });
        }
        if (turn !== mine) return;
        breakOff();
        set({ running: null });
      },
    };
  });
}
