import { describe, expect, test } from 'vitest';
import { parametricBoard } from '../../../src/core/board/parametric.ts';
import { atPitch, PITCHES } from '../../../src/core/board/pitches.ts';
import { distanceMm } from '../../../src/core/board/point.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import { boardSchema } from '../../../src/core/keymap/schema.ts';
import { FAMILY } from './boards.ts';

describe('ready boards', () => {
  test('offer 34, 36, 38, 40 and 42 keys and a one-piece one of 3 × 10 plus thumbs', () => {
    expect(READY_BOARDS.map(({ id, keys }) => [id, keys])).toEqual([
      ['split-34', 34],
      ['split-36', 36],
      ['split-38', 38],
      ['split-40', 40],
      ['split-42', 42],
      ['one-piece-36', 36],
    ]);
  });

  test.each(FAMILY)('$title: as many keys as it says, and a document', ({ board, keys }) => {
    expect(board.keys).toHaveLength(keys);
    expect(boardSchema.safeParse(board).success).toBe(true);
  });

  test.each(FAMILY)('$title: each finger of each hand has one home key', ({ board }) => {
    for (const hand of ['left', 'right']) {
      for (const finger of ['thumb', 'index', 'middle', 'ring', 'little']) {
        const homes = board.keys.filter((key) => key.home && key.hand === hand && key.finger === finger);
        expect(homes, `${hand} ${finger}`).toHaveLength(1);
      }
    }
  });

  test.each(FAMILY)('$title: fits on a desk of 360 mm', ({ board }) => {
    const xs = board.keys.map((key) => key.x);
    expect(Math.max(...xs) - Math.min(...xs)).toBeLessThan(360);
  });

  test('the one-piece board’s three rows are straight and have ten keys', () => {
    const board = FAMILY.find(({ title }) => title.startsWith('36 keys, one piece'))?.board;
    const rows = new Map<number, number>();
    for (const key of board?.keys ?? []) rows.set(key.y, (rows.get(key.y) ?? 0) + 1);
    expect([...rows.values()]).toEqual([10, 10, 10, 6]);
  });
});

describe('pitches', () => {
  // ISO 9241-4 asks for 19 mm ± 1 mm from key to key, across and down.
  test('the first lies within ISO 9241-4’s 19 ± 1 mm, measured on a board', () => {
    const [full] = PITCHES;
    const ready = READY_BOARDS[0];
    if (full === undefined || ready === undefined) throw new Error('nothing offered');
    const keys = new Map(
      parametricBoard(atPitch(ready.madeFrom, full), 'x').keys.map((key) => [key.id, key]),
    );
    const [home, above, inner] = [keys.get('R22'), keys.get('R12'), keys.get('R21')];
    if (home === undefined || above === undefined || inner === undefined) throw new Error('keys missing');
    expect(Math.abs(distanceMm(home, above) - 19)).toBeLessThanOrEqual(1);
    expect(Math.abs(full.xMm - 19)).toBeLessThanOrEqual(1);
    expect(distanceMm(home, inner)).toBeGreaterThanOrEqual(18);
  });

  test('18 × 17 mm lies outside it down the column, and says that it has no source', () => {
    const low = PITCHES.find(({ id }) => id === 'low-profile');
    expect([low?.xMm, low?.yMm]).toEqual([18, 17]);
    expect(low?.source).toBe('low-profile, common practice, no source');
  });
});
