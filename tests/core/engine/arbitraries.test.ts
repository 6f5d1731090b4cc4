import fc from 'fast-check';
import { expect, test } from 'vitest';
import { benchKeymap } from '../../../src/build/bench/bench-keymap.ts';
import { randomStream } from '../../../src/build/bench/engine-stream.ts';
import { play } from '../../../src/core/engine/play.ts';
import { checkKeymap } from '../../../src/core/keymap/read.ts';
import { playableArbitrary, streamArbitrary, thresholdsOf } from '../arbitraries/stream-arbitrary.ts';
import { both, chord, design, key } from './design.ts';
import { tinyHost } from './tiny-host.ts';

const SAMPLES = 2000;

test('random streams are valid and end with all keys up', () => {
  const law = fc.property(playableArbitrary(), ({ keymap, events }) => {
    expect(play(keymap, events, tinyHost)).toMatchObject({ ok: true });
    expect(events.filter(({ type }) => type === 'down')).toHaveLength(events.length / 2);
  });
  fc.assert(law, { numRuns: 1000 });
});

test('random cases reach every rule that the trace can name', () => {
  const cases = fc.sample(playableArbitrary({ chars: ['a', 'é', 'ß'] }), { numRuns: SAMPLES, seed: 1 });
  const rules = new Set<string>();
  for (const { keymap, events } of cases) {
    const played = play(keymap, events, tinyHost);
    if (played.ok) for (const entry of played.value.trace) rules.add(`${entry.rule} ${entry.what}`);
  }
  expect([...rules].toSorted()).toEqual([
    'A2 no-route',
    'A4 layer-off',
    'A4 layer-on',
    'A5 layer-off',
    'A5 layer-on',
    'A5 lock-off',
    'A5 lock-on',
    'G1 waiting',
    'G2 chord',
    'G2 no-chord',
    'G2 waiting',
    'G3 chord',
    'G4 chord',
    'G4 no-chord',
    'G6 chord',
    'G6 no-chord',
    'L1 latch-off',
    'L1 latch-on',
    'L1 layer-off',
    'L1 layer-on',
    'L2 latch-off',
    'L3 latch-off',
    'L4 latch-off',
    'S10 tap',
    'S11 tap',
    'S3 tap',
    'S4 tap',
    'S5 hold',
    'S6 hold',
    'S8 hold',
    'S9 hold',
    'S9 no-binding',
    'S9 open',
    'S9 tap',
  ]);
});

test('times lie exactly at thresholds, a quarter of a ms before and after them, and at each other', () => {
  const keymap = design({
    base: { F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 180 }) },
    chords: [chord('DF', 45, key('Tab'))],
  });
  expect(thresholdsOf(keymap)).toEqual([0, 45, 180, 200]);
  const streams = fc.sample(streamArbitrary(keymap), { numRuns: 200, seed: 1 });
  const gaps = new Set(streams.flatMap((events) => events.map(({ t }, at) => t - (events[at - 1]?.t ?? 0))));
  for (const gap of [0, 44.75, 45, 45.25, 179.75, 180, 180.25]) expect(gaps).toContain(gap);
});

test('a failing case prints itself as the contents of two files', () => {
  const printed = fc.stringify(fc.sample(playableArbitrary(), { numRuns: 1, seed: 1 })[0]);
  const [, keymap = '', events = ''] = /^keymap.json:\n(.*)\nevents.json:\n(.*)$/.exec(printed) ?? [];
  expect(checkKeymap(JSON.parse(keymap))).toMatchObject({ ok: true });
  expect(Array.isArray(JSON.parse(events))).toBe(true);
});

test.each([2, 3, 5, 8, 12, 16])('the design of the benchmark is valid with %i layers', (layers) => {
  const keymap = benchKeymap(layers);
  expect(checkKeymap(JSON.parse(JSON.stringify(keymap)))).toMatchObject({ ok: true });
  expect([keymap.board.keys.length, keymap.layers.length, keymap.chords?.length]).toEqual([42, layers, 30]);
});

test('the streams of the benchmark are valid, end with all keys up and are always the same', () => {
  const keymap = benchKeymap();
  const keys = keymap.board.keys.map(({ id }) => id);
  const events = randomStream(keys, 2000, 3, 500);
  expect(events).toHaveLength(2000);
  expect(events.filter(({ type }) => type === 'down')).toHaveLength(1000);
  expect(play(keymap, events, tinyHost).ok).toBe(true);
  expect(randomStream(keys, 2000, 3, 500)).toEqual(events);
  expect(randomStream(keys, 2000, 4, 500)).not.toEqual(events);
});
