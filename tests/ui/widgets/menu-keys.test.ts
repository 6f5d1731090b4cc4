import { expect, test } from 'vitest';
import { itemAfterKey } from '../../../src/ui/widgets/menu-keys.ts';

const labels = ['Duplicate', 'Rename', 'Delete'];

test.each([
  ['ArrowDown', 0, 1],
  ['ArrowDown', 2, 0],
  ['ArrowDown', -1, 0],
  ['ArrowUp', 1, 0],
  ['ArrowUp', 0, 2],
  ['ArrowUp', -1, 2],
  ['Home', 2, 0],
  ['End', 0, 2],
  ['d', 0, 2],
  ['D', 2, 0],
  ['r', 1, 1],
  ['x', 0, null],
  ['Enter', 0, null],
  [' ', 0, null],
])('%o on item %d leads to %o', (key, now, expected) => {
  expect(itemAfterKey(key, labels, now)).toBe(expected);
});

test('a menu of nothing leads nowhere', () => {
  expect(itemAfterKey('ArrowDown', [], -1)).toBeNull();
});
