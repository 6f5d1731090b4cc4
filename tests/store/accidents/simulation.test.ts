// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { usTable } from '../../../src/core/host/us-table.ts';
import { createRunCounter } from '../../../src/core/needs/counts-runs.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { pressRunsOf } from '../../../src/core/typist/press-runs.ts';
import { simulate } from '../../../src/core/typist/simulate.ts';
import { makeSimulation, type StartSimulation } from '../../../src/store/accidents/make-simulation.ts';
import { runSimulation, type SimulationRequest } from '../../../src/workers/run-simulation.ts';
import { chordOver, plainKeymap } from '../../core/typist/plain-keymap.ts';

const counter = createRunCounter();
counter.add('There were other errors, and they are rarer here; a sad alas was heard at last. ~'.repeat(20));
const english = counter.counts();
const keymap = plainKeymap({}, [chordOver('ER', 60)]);
const request = (words: number, seed = 1): SimulationRequest => ({
  keymap,
  table: usTable,
  counts: english,
  person: personAt(75),
  budget: { words, seed, usesEach: 10 },
});

describe('a simulation in the worker', () => {
  test('is the core’s own, word for word, and tells how far it is', () => {
    const told: number[] = [];
    const result = runSimulation(request(2000, 5), (done) => told.push(done));
    expect(usHost.outputOf('KeyE', { shift: false, level3: false, caps: false })).toMatchObject({
      char: 'e',
    });
    expect(result).toEqual(
      simulate(keymap, pressRunsOf(keymap, usHost, english), english, personAt(75), request(2000, 5).budget),
    );
    expect(told.length).toBeGreaterThan(5);
    expect(told).toEqual(told.toSorted((one, other) => one - other));
    expect(told.at(-1)).toBe(2000);
  });
});

/** Runs that end when told to. */
function held() {
  const runs: { finish: () => void; isStopped: boolean }[] = [];
  const start: StartSimulation = (asked, tell) => {
    const run = { finish: (): void => undefined, isStopped: false };
    runs.push(run);
    const result = new Promise<ReturnType<typeof runSimulation>>((done) => {
      run.finish = () => done(runSimulation(asked, tell));
    });
    const stop = () => {
      run.isStopped = true;
    };
    return { result, stop };
  };
  return { runs, store: makeSimulation(start) };
}

describe('the page’s simulation', () => {
  test('shows progress, then its result and what it was of', async () => {
    const { runs, store } = held();
    const running = store.getState().run(request(200));
    expect(store.getState().running).toEqual({ done: 0, words: 200 });
    runs[0]?.finish();
    await running;
    expect(store.getState()).toMatchObject({
      running: null,
      last: { of: request(200), result: { words: 200 } },
    });
  });

  test('one that is broken off leaves the former result, whenever it ends', async () => {
    const { runs, store } = held();
    const first = store.getState().run(request(200));
    runs[0]?.finish();
    await first;
    const second = store.getState().run(request(300));
    store.getState().cancel();
    expect(store.getState().running).toBeNull();
    expect(runs[1]?.isStopped).toBe(true);
    runs[1]?.finish();
    await second;
    expect(store.getState().last?.result.words).toBe(200);
  });

  test('a second one takes the place of the first', async () => {
    const { runs, store } = held();
    const first = store.getState().run(request(200));
    const second = store.getState().run(request(300));
    expect(runs[0]?.isStopped).toBe(true);
    for (const run of runs) run.finish();
    await Promise.all([first, second]);
    expect(store.getState().last?.result.words).toBe(300);
  });

  test('one that cannot be run says why', async () => {
    const store = makeSimulation(() => ({ result: Promise.reject(new Error('No worker.')), stop: () => {} }));
    await store.getState().run(request(200));
    expect(store.getState()).toMatchObject({ running: null, failed: 'No worker.', last: null });
  });
});
