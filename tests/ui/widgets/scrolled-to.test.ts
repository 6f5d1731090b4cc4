import { expect, test } from 'vitest';
import { scrolledTo } from '../../../src/ui/widgets/scrolled-to.ts';

// A list 170 px high, rows of 44 px.
test.each([
  { where: 'in sight already', scrollTop: 50, at: 88, height: 44, to: 50 },
  { where: 'above', scrollTop: 100, at: 88, height: 44, to: 88 },
  { where: 'below', scrollTop: 0, at: 396, height: 44, to: 270 },
  { where: 'cut at the end', scrollTop: 0, at: 132, height: 44, to: 6 },
  { where: 'higher than the list', scrollTop: 0, at: 44, height: 200, to: 44 },
])('a row that is $where', ({ scrollTop, at, height, to }) => {
  expect(scrolledTo({ scrollTop, clientHeight: 170 }, { at, height })).toBe(to);
});
