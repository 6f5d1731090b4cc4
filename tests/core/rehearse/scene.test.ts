import { describe, expect, test } from 'vitest';
import { lanesOf, lanesSeen, sceneOf } from '../../../src/core/rehearse/scene.ts';
import { namesIn, played } from './played.ts';

const run = played('R↓0 T↓30 R↑80 T↑90 F↓300 F↑390 J↓500 J↑560 A↓700 A↑780');
const lanes = lanesOf(run, namesIn(run));
const all = sceneOf(run, lanes, -1000, 5000);

describe('the time line', () => {
  test('has a lane for each key that was pressed, the left hand above the right', () => {
    expect(lanes.map(({ label, startsHand }) => (startsHand ? `| ${label}` : label))).toEqual([
      '| A',
      'F',
      'R',
      'T',
      '| J',
    ]);
  });

  test.each([
    [-1000, 5000, '| A F R T | J'],
    [0, 85, '| R T'],
    // F is up, but its threshold still runs.
    [400, 600, '| F | J'],
    [600, 650, ''],
  ])('of its lanes, those with something from %d to %d ms', (from, to, seen) => {
    const words = lanesSeen(run, lanes, from, to).map(({ label, startsHand, startsFinger }) => {
      expect(startsFinger || label !== 'A').toBe(true);
      return startsHand ? `| ${label}` : label;
    });
    expect(words.join(' ')).toBe(seen);
  });

  test('a bar for each press, with when it was decided', () => {
    expect(all.bars.map(({ lane, ...bar }) => ({ key: lanes[lane]?.label, ...bar }))).toEqual([
      { key: 'R', from: 0, decided: 30, to: 80, result: 'chord' },
      { key: 'T', from: 30, decided: 30, to: 90, result: 'chord' },
      { key: 'F', from: 300, decided: 390, to: 390, result: 'tap' },
      { key: 'J', from: 500, decided: 545, to: 560, result: 'tap' },
      { key: 'A', from: 700, decided: 700, to: 780, result: 'tap' },
    ]);
  });

  test('a band for each window over the keys that wait, and for each threshold', () => {
    expect(
      all.bands.map(({ lanes: on, ...band }) => ({ keys: on.map((at) => lanes[at]?.label), ...band })),
    ).toEqual([
      { keys: ['R', 'T'], kind: 'window', from: 0, to: 45 },
      { keys: ['F'], kind: 'threshold', from: 300, to: 500 },
      { keys: ['J'], kind: 'window', from: 500, to: 545 },
    ]);
  });

  test('a mark where something was decided: not for what acts at once, nor for a key that waited alone', () => {
    expect(all.marks.map(({ t, what }) => `${what}@${t}`)).toEqual(['chord@30', 'tap@390']);
  });

  test('what came out', () => {
    expect(all.notes.map(({ t, text }) => `${text}@${t}`)).toEqual(['\t@30', 'f@390', 'j@545', 'a@700']);
  });

  test.each([
    [40, 85, ['R', 'T']],
    [95, 290, []],
    [350, 510, ['F', 'J']],
    [390, 390, ['F']],
  ])('from %d to %d ms: only what reaches into it', (from, to, keys) => {
    expect(sceneOf(run, lanes, from, to).bars.map(({ lane }) => lanes[lane]?.label)).toEqual(keys);
  });
});
