import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { keyName } from '../../../src/core/board/key-name.ts';
import { cap, FAMILY, readyBoard, scatteredBoards } from './boards.ts';

describe('key names', () => {
  test.each([
    ['split-36', 'R22', 'right index home'],
    ['split-36', 'L14', 'left ring top'],
    ['split-36', 'L33', 'left middle bottom'],
    ['split-36', 'R21', 'right inner index middle'],
    ['split-36', 'LT1', 'left inner thumb'],
    ['split-36', 'LT2', 'left middle thumb'],
    ['split-34', 'RT2', 'right outer thumb'],
    ['split-42', 'R16', 'right outer little top'],
    ['split-38', 'L26', 'left outer little middle'],
    ['split-38', 'L36', 'left outer little bottom'],
    ['one-piece-36', 'L25', 'left little home'],
  ])('on %s, %s is the %s', (board, key, name) => {
    expect(keyName(readyBoard(board), key)).toBe(name);
  });

  test.each(FAMILY)('$title: no two alike, none in need of its id', ({ board }) => {
    const names = board.keys.map((key) => keyName(board, key.id));
    expect(new Set(names).size).toBe(names.length);
    expect(names.filter((name) => name.includes('('))).toEqual([]);
  });

  test('rows beyond three and a single thumb key', () => {
    const column = [-38, -19, 0, 19, 38].map((y, index) => cap(`K${index}`, 0, y, { home: y === 0 }));
    const board = { name: 'tall', keys: [...column, cap('T', 0, 70, { finger: 'thumb' })] };
    expect(board.keys.map((key) => keyName(board, key.id))).toEqual([
      'right index far top',
      'right index top',
      'right index home',
      'right index bottom',
      'right index far bottom',
      'right thumb',
    ]);
  });

  test('an unknown id is its own name', () => {
    expect(keyName(readyBoard('split-34'), 'X9')).toBe('X9');
  });

  test.prop([scatteredBoards], { numRuns: 300 })('are unique even on boards without order', (board) => {
    const names = board.keys.map((key) => keyName(board, key.id));
    expect(new Set(names).size).toBe(names.length);
  });
});
