import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { boardRows } from '../../../src/core/board/rows.ts';
import { FAMILY, readyBoard, scatteredBoards } from './boards.ts';

const lines = (id: string) => boardRows(readyBoard(id)).map((row) => row.join(' '));

describe('rows', () => {
  test('of a splayed board: ten keys from left to right, thumbs last', () => {
    expect(lines('split-36')).toEqual([
      'L15 L14 L13 L12 L11 R11 R12 R13 R14 R15',
      'L25 L24 L23 L22 L21 R21 R22 R23 R24 R25',
      'L35 L34 L33 L32 L31 R31 R32 R33 R34 R35',
      'LT3 LT2 LT1 RT1 RT2 RT3',
    ]);
  });

  test('a short outer column joins the home and the bottom row', () => {
    expect(lines('split-38')[0]).toBe('L15 L14 L13 L12 L11 R11 R12 R13 R14 R15');
    expect(lines('split-38')[1]).toBe('L26 L25 L24 L23 L22 L21 R21 R22 R23 R24 R25 R26');
  });

  test.each(FAMILY)('$title: three rows and the thumbs, whatever the pitch', ({ board }) => {
    expect(boardRows(board)).toHaveLength(4);
  });

  test.prop([scatteredBoards], { numRuns: 300 })('hold every key once', (board) => {
    const ids = boardRows(board).flat();
    expect([...ids].sort()).toEqual(board.keys.map((key) => key.id).sort());
  });
});
