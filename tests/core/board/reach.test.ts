import { describe, expect, test } from 'vitest';
import { handSpanMm, oneFingerGroups } from '../../../src/core/board/reach.ts';
import { cap, readyBoard } from './boards.ts';

const board = readyBoard('split-36');

describe('keys that one finger would press', () => {
  test.each([
    { keys: ['R22', 'R23', 'R24'], groups: [] },
    { keys: ['R22', 'R21'], groups: [['R22', 'R21']] },
    { keys: ['R12', 'L12', 'R32'], groups: [['R12', 'R32']] },
    {
      keys: ['LT1', 'R22', 'LT2', 'R32'],
      groups: [
        ['LT1', 'LT2'],
        ['R22', 'R32'],
      ],
    },
    { keys: ['R22', 'unknown'], groups: [] },
  ])('$keys', ({ keys, groups }) => {
    expect(oneFingerGroups(board, keys)).toEqual(groups);
  });
});

describe('span of a hand', () => {
  const flat = { name: 'flat', keys: [cap('A', 0, 0), cap('B', 30, 40), cap('C', 300, 0, { hand: 'left' })] };

  test.each([
    { keys: ['A', 'B'], mm: 50 },
    { keys: ['A', 'B', 'C'], mm: 50 },
    { keys: ['A', 'C'], mm: 0 },
    { keys: ['A'], mm: 0 },
  ])('$keys is $mm mm', ({ keys, mm }) => {
    expect(handSpanMm(flat, keys)).toBe(mm);
  });
});
