import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { besideKey, boxAround } from '../../../../src/ui/board/cards/beside-key.ts';
import type { WindowBox } from '../../../../src/ui/widgets/beside-of.ts';

const WINDOW = { width: 1440, height: 900 };
const CARD = { width: 372, height: 420 };
const box = (left: number, top: number, width = 46, height = 46): WindowBox => ({
  left,
  top,
  right: left + width,
  bottom: top + height,
});

describe('where a card stands', () => {
  test.each([
    { what: 'right of its key', key: box(400, 300), win: WINDOW, place: { left: 456, top: 183 } },
    {
      what: 'left of it at the right edge',
      key: box(1300, 300),
      win: WINDOW,
      place: { left: 918, top: 183 },
    },
    {
      what: 'under it in a narrow window',
      key: box(150, 100),
      win: { width: 390, height: 844 },
      place: { left: 8, top: 156 },
    },
    {
      what: 'above it, low in a narrow window',
      key: box(150, 600),
      win: { width: 390, height: 844 },
      place: { left: 8, top: 170 },
    },
  ])('$what', ({ key, win, place }) => {
    expect(besideKey(key, CARD, win)).toEqual(place);
  });

  test.each([
    ['right of', box(480, 100), 10],
    ['left of', box(-400, 100), 8],
  ])('stays in the window when its key is %s it', (_, key, left) => {
    expect(besideKey(key, CARD, { width: 390, height: 844 }).left).toBe(left);
  });

  test.each([
    ['below what is to stay free', box(400, 60), 48, 56],
    ['lower down it does not matter', box(400, 500), 48, 383],
    ['where the card is too long for it, at the top as far as it must', box(400, 60), 600, 472],
  ])('%s', (_, key, free, top) => {
    expect(besideKey(key, CARD, WINDOW, free).top).toBe(top);
  });

  const keys = fc
    .record({ left: fc.integer({ min: 0, max: 1390 }), top: fc.integer({ min: 0, max: 850 }) })
    .map(({ left, top }) => box(left, top));
  const sizes = fc.record({ width: fc.constant(372), height: fc.integer({ min: 100, max: 880 }) });

  test.prop([keys, sizes])(
    'never over its key while a side has room, and always in the window',
    (key, card) => {
      const { left, top } = besideKey(key, card, WINDOW);
      const covers =
        left < key.right && left + card.width > key.left && top < key.bottom && top + card.height > key.top;
      expect(covers).toBe(false);
      expect(left).toBeGreaterThanOrEqual(0);
      expect(left + card.width).toBeLessThanOrEqual(WINDOW.width);
      expect(top).toBeGreaterThanOrEqual(0);
      expect(top + card.height).toBeLessThanOrEqual(WINDOW.height);
    },
  );

  test('a chord’s card stands beside all of its keys', () => {
    expect(boxAround([box(10, 20), box(100, 5)])).toEqual({ left: 10, top: 5, right: 146, bottom: 66 });
    expect(boxAround([])).toBeNull();
  });
});
