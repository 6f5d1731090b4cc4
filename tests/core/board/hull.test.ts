import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { convexHull } from '../../../src/core/board/hull.ts';
import type { Point } from '../../../src/core/board/point.ts';

const points = fc.array(
  fc.record({ x: fc.integer({ min: -9, max: 9 }), y: fc.integer({ min: -9, max: 9 }) }),
  { minLength: 3, maxLength: 30 },
);

const cross = (a: Point, b: Point, c: Point) => (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);

describe('convex hull', () => {
  test('of a square with points inside and on its edges is the square', () => {
    const square = [0, 4].flatMap((x) => [0, 4].map((y) => ({ x, y })));
    const hull = convexHull([...square, { x: 2, y: 2 }, { x: 2, y: 0 }, { x: 4, y: 4 }]);
    expect(hull).toEqual([
      { x: 0, y: 0 },
      { x: 4, y: 0 },
      { x: 4, y: 4 },
      { x: 0, y: 4 },
    ]);
  });

  test.prop([points], { numRuns: 1000 })(
    'turns one way at each corner and leaves no point outside',
    (all) => {
      const hull = convexHull(all);
      hull.forEach((corner, index) => {
        const next = hull[(index + 1) % hull.length] ?? corner;
        const after = hull[(index + 2) % hull.length] ?? corner;
        if (hull.length > 2) expect(cross(corner, next, after)).toBeGreaterThan(0);
        for (const point of all) expect(cross(corner, next, point)).toBeGreaterThanOrEqual(0);
      });
    },
  );
});
