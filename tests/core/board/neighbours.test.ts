import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { type Direction, neighbourOf } from '../../../src/core/board/neighbours.ts';
import type { Board } from '../../../src/core/keymap/types.ts';
import { cap, FAMILY, readyBoard, scatteredBoards } from './boards.ts';

const DIRECTIONS: readonly Direction[] = ['left', 'right', 'up', 'down'];

function reachedFrom(board: Board, start: string): ReadonlySet<string> {
  const reached = new Set([start]);
  for (const key of reached) {
    for (const direction of DIRECTIONS) {
      const next = neighbourOf(board, key, direction);
      if (next !== null) reached.add(next);
    }
  }
  return reached;
}

describe('neighbours', () => {
  test.each([
    ['R22', 'left', 'R21'],
    ['R22', 'right', 'R23'],
    ['R22', 'up', 'R12'],
    ['R22', 'down', 'R32'],
    ['L21', 'right', 'R21'],
    ['R11', 'left', 'L11'],
    ['R25', 'right', null],
    ['L13', 'up', null],
    ['L25', 'left', null],
    ['RT1', 'right', 'RT2'],
    ['RT1', 'left', 'LT1'],
    ['R32', 'down', 'RT3'],
    ['RT3', 'up', 'R32'],
  ] as const)('on the splayed 36 keys, %s %s is %s', (from, direction, to) => {
    expect(neighbourOf(readyBoard('split-36'), from, direction)).toBe(to);
  });

  test('a row moved by stagger is beside, not above', () => {
    const board = { name: 'two', keys: [cap('A', 0, 0), cap('B', 19, -6)] };
    expect(neighbourOf(board, 'A', 'up')).toBeNull();
    expect(neighbourOf(board, 'A', 'right')).toBe('B');
  });

  test('of two equally near keys the first on the board', () => {
    const board = { name: 'three', keys: [cap('A', 0, 0), cap('B', 10, -19), cap('C', -10, -19)] };
    expect(neighbourOf(board, 'A', 'up')).toBe('B');
  });

  test('an unknown key has none', () => {
    expect(neighbourOf(readyBoard('split-36'), 'X', 'up')).toBeNull();
  });

  test.each(FAMILY)('$title: arrows lead from every key to every other', ({ board }) => {
    for (const key of board.keys) expect(reachedFrom(board, key.id).size, key.id).toBe(board.keys.length);
  });

  test.prop([scatteredBoards], { numRuns: 300 })(
    'a step goes in its direction, even between scattered keys',
    (board) => {
      for (const from of board.keys) {
        const to = board.keys.find((key) => key.id === neighbourOf(board, from.id, 'right'));
        if (to !== undefined) expect(to.x).toBeGreaterThan(from.x);
        const above = board.keys.find((key) => key.id === neighbourOf(board, from.id, 'up'));
        if (above !== undefined) expect(above.y).toBeLessThan(from.y);
      }
    },
  );
});
