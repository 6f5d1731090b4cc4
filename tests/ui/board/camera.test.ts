import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import {
  broughtIntoView,
  type Camera,
  fitted,
  MOST_ZOOM,
  movedBy,
  shownFrame,
  zoomedAt,
} from '../../../src/ui/board/camera.ts';

const BOARD = { x: -100, y: -40, width: 200, height: 80 };
const points = fc.record({
  x: fc.double({ min: -100, max: 100, noNaN: true }),
  y: fc.double({ min: -40, max: 40, noNaN: true }),
});
const cameras: fc.Arbitrary<Camera> = fc.record({
  zoom: fc.double({ min: 1, max: MOST_ZOOM, noNaN: true }),
  middle: points,
});

describe('camera', () => {
  test('fitted, it shows the whole board', () => {
    expect(shownFrame(fitted(BOARD), BOARD)).toEqual(BOARD);
  });

  test('zooming keeps the point under the pointer where it is', () => {
    const point = { x: 50, y: 20 };
    const before = shownFrame(fitted(BOARD), BOARD);
    const now = shownFrame(zoomedAt(fitted(BOARD), BOARD, point, 2), BOARD);
    const part = (frame: typeof before) => [
      (point.x - frame.x) / frame.width,
      (point.y - frame.y) / frame.height,
    ];
    expect(part(now)).toEqual(part(before));
    expect(now.width).toBe(100);
  });

  test.prop([cameras, points, fc.double({ min: 0.01, max: 100, noNaN: true })])(
    'zoom stays within its limits and the middle on the board',
    (camera, point, factor) => {
      const next = zoomedAt(camera, BOARD, point, factor);
      expect(next.zoom).toBeLessThanOrEqual(MOST_ZOOM);
      expect(next.zoom).toBeGreaterThan(0.5);
      expect(Math.abs(next.middle.x)).toBeLessThanOrEqual(100);
      expect(Math.abs(next.middle.y)).toBeLessThanOrEqual(40);
    },
  );

  test('it cannot be moved off the board', () => {
    expect(movedBy(fitted(BOARD), BOARD, { x: 5000, y: -5000 }).middle).toEqual({ x: 100, y: -40 });
  });

  test.prop([cameras, points])('a point is brought into view by the least move', (camera, point) => {
    const next = broughtIntoView(camera, BOARD, point, 8);
    const { x, y, width, height } = shownFrame(next, BOARD);
    expect(point.x).toBeGreaterThanOrEqual(x - 1e-9);
    expect(point.x).toBeLessThanOrEqual(x + width + 1e-9);
    expect(point.y).toBeGreaterThanOrEqual(y - 1e-9);
    expect(point.y).toBeLessThanOrEqual(y + height + 1e-9);
    expect(next.zoom).toBe(camera.zoom);
  });

  test('what is in view already moves nothing', () => {
    const camera = { zoom: 2, middle: { x: 0, y: 0 } };
    expect(broughtIntoView(camera, BOARD, { x: 10, y: 5 }, 8)).toBe(camera);
  });
});
