import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { withColumn } from '../../../src/core/board/columns.ts';
import { matchKeys } from '../../../src/core/board/match-keys.ts';
import { parametricBoard } from '../../../src/core/board/parametric.ts';
import type { Board } from '../../../src/core/keymap/types.ts';
import { readyBoard, scatteredBoards } from './boards.ts';

const SMALL = readyBoard('split-36');

function changedOnly(pairs: ReadonlyMap<string, string>): string[] {
  return [...pairs].filter(([from, to]) => from !== to).map(([from, to]) => `${from} ${to}`);
}

describe('keys of another board', () => {
  test('a board with an outer column more has every key of the smaller one', () => {
    const pairs = matchKeys(SMALL, readyBoard('split-42'));
    expect(pairs.size).toBe(36);
    expect(changedOnly(pairs)).toEqual([]);
  });

  test('a board of two thumb keys has all but the outer thumbs of one with three', () => {
    const pairs = matchKeys(SMALL, readyBoard('split-34'));
    const lost = SMALL.keys.filter(({ id }) => !pairs.has(id)).map(({ id }) => id);
    expect(lost).toEqual(['LT3', 'RT3']);
  });

  test('with an inner column more everything moves one column out in name, and stays under its finger', () => {
    const { madeFrom } = SMALL;
    if (madeFrom === undefined) throw new Error('no parameters');
    const wider = parametricBoard({ ...madeFrom, columns: withColumn(madeFrom.columns, 'inner') }, 'wider');
    const pairs = matchKeys(SMALL, wider);
    expect(pairs.size).toBe(36);
    expect([pairs.get('L22'), pairs.get('R11'), pairs.get('LT2')]).toEqual(['L23', 'R12', 'LT2']);
  });

  test('names do not matter where the place is the same', () => {
    const renamed: Board = { ...SMALL, keys: SMALL.keys.map((key, at) => ({ ...key, id: `k${at}` })) };
    const pairs = matchKeys(renamed, readyBoard('one-piece-36'));
    expect(pairs.size).toBe(36);
    const home = renamed.keys.find(({ hand, finger, home }) => hand === 'right' && finger === 'ring' && home);
    expect(pairs.get(home?.id ?? '')).toBe('R24');
  });

  test('a place that is gone is made up for by the id, under the same finger only', () => {
    const high = (id: string, finger: 'index' | 'ring'): Board => ({
      ...SMALL,
      keys: SMALL.keys.filter((key) => key.id !== 'L11').concat({ ...far, id, finger }),
    });
    const far = { ...(SMALL.keys[0] ?? fail()), x: -400, y: 0, home: false };
    const odd = (finger: 'index' | 'ring') => matchKeys(SMALL, high('L11', finger)).get('L11');
    expect([odd('index'), odd('ring')]).toEqual(['L11', undefined]);
  });

  test('what is settled is left out', () => {
    const pairs = matchKeys(SMALL, SMALL, { before: new Set(['L22']), after: new Set(['R22']) });
    expect([pairs.has('L22'), pairs.has('R22'), pairs.get('L23')]).toEqual([false, false, 'L23']);
  });

  test.prop([scatteredBoards, scatteredBoards], { numRuns: 100 })(
    'no key is taken twice, and a board’s keys are its own',
    (one, other) => {
      const pairs = matchKeys(one, other);
      expect(new Set(pairs.values()).size).toBe(pairs.size);
      expect(changedOnly(matchKeys(one, one))).toEqual([]);
      expect(matchKeys(one, one).size).toBe(one.keys.length);
    },
  );
});

function fail(): never {
  throw new Error('no key');
}
