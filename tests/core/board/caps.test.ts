import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { boardExtent, capCorners, overlapMm, overlappingCaps } from '../../../src/core/board/caps.ts';
import { turned } from '../../../src/core/board/point.ts';
import type { BoardKey } from '../../../src/core/keymap/types.ts';
import { cap, FAMILY, scatteredBoards } from './boards.ts';

const placed = fc
  .record({
    x: fc.integer({ min: -25, max: 25 }),
    y: fc.integer({ min: -25, max: 25 }),
    rotation: fc.integer({ min: -180, max: 180 }),
    width: fc.integer({ min: 8, max: 40 }),
    height: fc.integer({ min: 8, max: 30 }),
  })
  .map((place) => cap('K', 0, 0, place));

/** The slow way to the same answer: does any point of a fine grid over one cap lie inside the other? */
function sharesGridPoint(one: BoardKey, other: BoardKey, steps = 40): boolean {
  for (let i = 0; i <= steps; i++) {
    for (let j = 0; j <= steps; j++) {
      const local = { x: (i / steps - 0.5) * one.width, y: (j / steps - 0.5) * one.height };
      const point = turned(local, one.rotation);
      const back = turned({ x: point.x + one.x - other.x, y: point.y + one.y - other.y }, -other.rotation);
      if (Math.abs(back.x) < other.width / 2 && Math.abs(back.y) < other.height / 2) return true;
    }
  }
  return false;
}

describe('caps', () => {
  test('corners turn clockwise about the centre', () => {
    const corners = capCorners(cap('K', 100, 50, { width: 20, height: 10, rotation: 90 }));
    const rounded = corners.map(({ x, y }) => [Math.round(x), Math.round(y)]);
    expect(rounded).toEqual([
      [105, 40],
      [105, 60],
      [95, 60],
      [95, 40],
    ]);
  });

  test.each([
    { what: 'one pitch apart', other: cap('B', 19, 0), overlaps: false },
    { what: 'edge on edge', other: cap('B', 18, 0), overlaps: false },
    { what: 'a twentieth deep', other: cap('B', 17.95, 0), overlaps: true },
    {
      what: 'turned by 45 degrees, corner short of the edge',
      other: cap('B', 22, 0, { rotation: 45 }),
      overlaps: false,
    },
    {
      what: 'turned by 45 degrees, corner inside',
      other: cap('B', 21.5, 0, { rotation: 45 }),
      overlaps: true,
    },
    {
      what: 'diagonal: upright boxes meet, turned caps do not',
      other: cap('B', 16, 16, { rotation: 45 }),
      overlaps: false,
    },
    { what: 'one inside the other', other: cap('B', 1, 1, { width: 5, height: 5 }), overlaps: true },
  ])('$what', ({ other, overlaps }) => {
    const pairs = overlappingCaps({ name: 'pair', keys: [cap('A', 0, 0), other] });
    expect(pairs).toEqual(overlaps ? [['A', 'B']] : []);
  });

  test.prop([placed, placed], { numRuns: 1500 })(
    'agree with a grid of points laid over both',
    (one, other) => {
      const depth = overlapMm(one, other);
      expect(overlapMm(other, one)).toBeCloseTo(depth, 9);
      // Between 0 and 1.5 mm the grid may fall between the points.
      if (depth <= 0) expect(sharesGridPoint(one, other)).toBe(false);
      if (depth > 1.5) expect(sharesGridPoint(one, other) || sharesGridPoint(other, one)).toBe(true);
    },
  );

  test.prop([scatteredBoards], { numRuns: 300 })(
    'the extent holds every corner and touches four of them',
    (board) => {
      const extent = boardExtent(board);
      const corners = board.keys.flatMap((key) => capCorners(key));
      expect(Math.min(...corners.map(({ x }) => x - extent.minX))).toBe(0);
      expect(Math.max(...corners.map(({ x }) => x - extent.maxX))).toBe(0);
      expect(Math.min(...corners.map(({ y }) => y - extent.minY))).toBe(0);
      expect(Math.max(...corners.map(({ y }) => y - extent.maxY))).toBe(0);
    },
  );

  test.each(FAMILY)('none overlap on the $title', ({ board }) => {
    expect(overlappingCaps(board)).toEqual([]);
  });
});
