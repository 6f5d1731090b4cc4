import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { besideOf } from '../../../src/ui/widgets/beside-of.ts';

const win = { width: 1000, height: 600 };
const anchorAt = (left: number, top: number) => ({ left, top, right: left + 40, bottom: top + 30 });

describe('a sheet beside its anchor', () => {
  test.each([
    ['under it, left edges in line', anchorAt(100, 50), { left: 100, top: 84 }],
    ['moved in from the right edge', anchorAt(950, 50), { left: 792, top: 84 }],
    ['above it where there is no room under it', anchorAt(100, 550), { left: 100, top: 396 }],
  ])('%s', (_, anchor, expected) => {
    expect(besideOf(anchor, { width: 200, height: 150 }, win)).toEqual(expected);
  });

  test('is wholly in the window if it fits in at all', () => {
    const within = (most: number) => fc.integer({ min: 0, max: most });
    fc.assert(
      fc.property(within(960), within(570), within(980), within(580), (x, y, width, height) => {
        const { left, top } = besideOf(anchorAt(x, y), { width, height }, win);
        expect(left).toBeGreaterThanOrEqual(0);
        expect(top).toBeGreaterThanOrEqual(0);
        expect(left + width).toBeLessThanOrEqual(win.width);
        expect(top + height).toBeLessThanOrEqual(win.height);
      }),
    );
  });
});
