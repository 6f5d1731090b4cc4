import { expect, test } from 'vitest';
import type { Measured } from '../../../src/core/typist/measured.ts';
import { MEASURED_LIMITS, type MeasuredFile } from '../../../src/core/typist/measured-file.ts';
import type { Person } from '../../../src/core/typist/person.ts';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { makeMeasured } from '../../../src/store/measured/make-measured.ts';

function made(values = memoryKeyValue()) {
  const handed: (Person | null)[] = [];
  const store = makeMeasured(
    values,
    (person) => handed.push(person),
    () => 77,
  );
  return { store, handed, values };
}

/** Times spread evenly: what they are is no matter here. */
const typed: Measured = {
  intervals: Array.from({ length: 150 }, (_, at) => ({ group: at % 11, band: null, ms: 80 + 1.5 * at })),
  dwells: Array.from({ length: 90 }, (_, at) => ({ finger: at % 9, ms: 70 + at })),
  chords: Array.from({ length: 12 }, (_, at) => ({ hands: 'one' as const, onsetsMs: [0, 5 + 3 * at] })),
};

test('what was measured is handed in, kept, and there again the next time', async () => {
  const first = made();
  await first.store.getState().start();
  expect(first.store.getState().typist).toBeNull();
  await first.store.getState().take(typed, 0.1, 'add');
  const person = first.handed.at(-1);
  expect(person?.parameters.wpm).toBeCloseTo(43, 0);

  const second = made(first.values);
  await second.store.getState().start();
  expect(second.handed).toEqual([person]);
  expect(second.store.getState().typist?.file).toMatchObject({ measuredAt: 77, clockStepMs: 0.1 });
});

test('a second measuring adds, or takes the place of the first', async () => {
  const { store } = made();
  await store.getState().take(typed, 0.1, 'add');
  await store.getState().take(typed, 4, 'add');
  expect(store.getState().typist?.file.dwells.length).toBe(2 * typed.dwells.length);
  expect(store.getState().typist?.file.clockStepMs).toBe(4);
  await store.getState().take(typed, 1, 'replace');
  expect(store.getState().typist?.file.dwells.length).toBe(typed.dwells.length);
  expect(store.getState().typist?.file.clockStepMs).toBe(1);
});

test('deleted is gone, here and where it was kept, and nobody is handed in any more', async () => {
  const { store, handed, values } = made();
  await store.getState().take(typed, 0.1, 'add');
  await store.getState().forget();
  expect(store.getState().typist).toBeNull();
  expect(handed.at(-1)).toBeNull();
  expect(await values.names()).toEqual([]);
});

test('what was kept and is not what it should be is as good as nothing', async () => {
  const { store, values } = made();
  await values.set('measured typist', { format: 'measured-typist', version: 9 });
  await store.getState().start();
  expect(store.getState().typist).toBeNull();
});

test('what is measured while the kept is still being read is not overwritten by it', async () => {
  const first = made();
  await first.store.getState().take(typed, 0.1, 'add');
  const second = made(first.values);
  const starting = second.store.getState().start();
  await second.store.getState().take(typed, 2, 'replace');
  await starting;
  expect(second.store.getState().typist?.file.clockStepMs).toBe(2);
});

const opened: MeasuredFile = {
  format: 'measured-typist',
  version: 1,
  measuredAt: 12,
  clockStepMs: 5,
  ...typed,
};

test('a file that is opened has the time of its own measuring, and can be added', async () => {
  const { store, handed, values } = made();
  expect(await store.getState().open(opened, 'add')).toBe(true);
  expect(store.getState().typist?.file).toEqual(opened);
  expect(await values.get('measured typist')).toEqual(opened);
  expect(handed.at(-1)?.parameters.wpm).toBeCloseTo(43, 0);
  await store.getState().take(typed, 0.1, 'replace');
  await store.getState().open(opened, 'add');
  expect(store.getState().typist?.file).toMatchObject({ measuredAt: 77, clockStepMs: 5 });
  expect(store.getState().typist?.file.dwells.length).toBe(2 * typed.dwells.length);
  await store.getState().open(opened, 'replace');
  expect(store.getState().typist?.file).toEqual(opened);
});

test('what would be too much together changes nothing', async () => {
  const { store } = made();
  await store.getState().take(typed, 0.1, 'add');
  const before = store.getState().typist;
  const dwells = Array.from({ length: MEASURED_LIMITS.times }, () => ({ finger: 1, ms: 90 }));
  expect(await store.getState().open({ ...opened, dwells }, 'add')).toBe(false);
  expect(store.getState().typist).toBe(before);
});
