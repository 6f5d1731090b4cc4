import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { distanceMm } from '../../../src/core/board/point.ts';
import { snapped, snappedTurn } from '../../../src/core/board/snap.ts';
import { cap, readyBoard } from './boards.ts';

const SNAP = { gapMm: 1, withinMm: 1.5 };
const at = (x: number, y: number, others = [cap('A', 0, 0)]) => snapped(cap('K', x, y), others, SNAP);

describe('snapping', () => {
  test.each([
    ['on the column line, a pitch below', 0.9, 18.2, { x: 0, y: 19 }, ['A', 'A']],
    ['on the column line alone', 0.9, 30.04, { x: 0, y: 30 }, ['A']],
    ['on the row line, a pitch aside', 19.6, -0.7, { x: 19, y: 0 }, ['A', 'A']],
    ['nowhere near', 40.12, 31.37, { x: 40.1, y: 31.4 }, []],
  ])('%s', (_, x, y, place, of) => {
    const found = at(x, y);
    expect(found.at).toEqual(place);
    expect(found.guides.map((guide) => guide.of)).toEqual(of);
  });

  test('leans with the key that it is aligned to', () => {
    const leaning = cap('A', 0, 0, { rotation: 30 });
    const below = { x: -9.5, y: 16.454 };
    expect(at(below.x + 0.6, below.y - 0.4, [leaning]).at).toEqual({ x: -9.5, y: 16.454 });
  });

  test('between two keys it takes a line of each', () => {
    const found = at(0.8, 29.2, [cap('A', 0, 0), cap('B', 60, 30)]);
    expect(found.at).toEqual({ x: 0, y: 30 });
    expect(found.guides.map((guide) => guide.of).sort()).toEqual(['A', 'B']);
  });

  test('a tie goes to the key that is first on the board', () => {
    const found = at(0, 60, [cap('A', 0, 0), cap('B', 0, 120)]);
    expect(found.guides[0]?.of).toBe('A');
  });

  const keys = readyBoard('split-36').keys.filter(({ hand }) => hand === 'right');
  test.prop([fc.integer({ min: 0, max: 170 }), fc.integer({ min: -40, max: 80 })], { numRuns: 200 })(
    'never goes further than its reach, and what fell into place stays there as far as its reach goes',
    (x, y) => {
      const once = snapped(cap('K', x, y), keys, SNAP);
      expect(distanceMm(once.at, { x, y })).toBeLessThanOrEqual(SNAP.withinMm + 0.08);
      if (once.guides.length < 2) return;
      const again = snapped(cap('K', once.at.x, once.at.y), keys, SNAP);
      if (distanceMm(again.at, { x, y }) > SNAP.withinMm) return;
      expect(distanceMm(again.at, once.at)).toBeLessThan(0.1);
    },
  );

  test.each([
    [13.2, 12.4],
    [14.1, 15],
    [17.4, 17],
    [-44.2, -45],
  ])('a turn of %d falls to %d beside keys that lean by 12.4', (degrees, expected) => {
    expect(snappedTurn(degrees, [cap('A', 0, 0, { rotation: 12.4 })])).toBe(expected);
  });
});
