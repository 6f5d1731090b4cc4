import { describe, expect, test } from 'vitest';
import { usTable } from '../../../src/core/host/us-table.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { type ChordSuggestions, USUAL_WISH } from '../../../src/core/typist/suggest-chords.ts';
import { makeChordSearch, type RunningSearch } from '../../../src/store/suggest/make-chord-search.ts';
import { type ChordSearch, findChords } from '../../../src/workers/find-chords.ts';
import { sample } from '../sample.ts';

const search: ChordSearch = {
  keymap: sample,
  table: usTable,
  counts: { total: 2, after: new Map([['', [{ char: 'a', count: 2 }]]]) },
  person: personAt(50),
  wish: { ...USUAL_WISH, keys: [2, 2], layers: ['base'] },
};

/** Searches that a test ends by hand. */
function byHand() {
  const started: {
    readonly tell: (considered: number) => void;
    readonly end: (result: ChordSuggestions) => void;
    readonly fail: (error: Error) => void;
    stopped: boolean;
  }[] = [];
  const store = makeChordSearch((_, tell): RunningSearch => {
    let [end, fail]: [(result: ChordSuggestions) => void, (error: Error) => void] = [() => {}, () => {}];
    const found = new Promise<ChordSuggestions>((resolve, reject) => {
      [end, fail] = [resolve, reject];
    });
    const one = { tell, end, fail, stopped: false };
    started.push(one);
    return {
      found,
      stop: () => {
        one.stopped = true;
      },
    };
  });
  return { store, started };
}

const result = (considered: number): ChordSuggestions => ({ suggestions: [], considered, stoppedBy: 'all' });

describe('a search for chords', () => {
  test('tells how far it is, and then what it found', async () => {
    const { store, started } = byHand();
    const run = store.getState().run(search);
    started[0]?.tell(8);
    expect(store.getState().running?.considered).toBe(8);
    expect(store.getState().running?.all).toBeGreaterThan(0);
    started[0]?.end(result(9));
    await run;
    expect(store.getState()).toMatchObject({ running: null, found: { of: search, result: result(9) } });
  });

  test('a newer one takes its place, and what comes of the older one is late', async () => {
    const { store, started } = byHand();
    const first = store.getState().run(search);
    const second = store.getState().run({ ...search, person: personAt(90) });
    expect(started[0]?.stopped).toBe(true);
    started[0]?.tell(5);
    started[0]?.end(result(1));
    await first;
    expect(store.getState().found).toBeNull();
    started[1]?.end(result(2));
    await second;
    expect(store.getState().found?.result).toEqual(result(2));
  });

  test('broken off, it leaves what was found before; cleared, nothing', async () => {
    const { store, started } = byHand();
    const run = store.getState().run(search);
    started[0]?.end(result(3));
    await run;
    void store.getState().run(search);
    store.getState().cancel();
    expect(started[1]?.stopped).toBe(true);
    expect(store.getState()).toMatchObject({ running: null, found: { result: result(3) } });
    store.getState().clear();
    expect(store.getState().found).toBeNull();
  });

  test('one that fails says why', async () => {
    const { store, started } = byHand();
    const run = store.getState().run(search);
    started[0]?.fail(new Error('No worker today.'));
    await run;
    expect(store.getState()).toMatchObject({ running: null, failed: 'No worker today.' });
  });
});

test('what is sent over can be sent, and finds the same there', () => {
  const there = structuredClone(search);
  expect(findChords(there, () => {})).toEqual(findChords(search, () => {}));
  expect(findChords(there, () => {}).suggestions.length).toBeGreaterThan(0);
});
