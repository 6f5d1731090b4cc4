import { describe, expect, test } from 'vitest';
import { placeTag, sharedArea } from '../../../src/ui/board/tag-places.ts';

const SQUARE = [
  { x: 0, y: 0 },
  { x: 40, y: 0 },
  { x: 40, y: 20 },
  { x: 0, y: 20 },
];
const SIZE = { width: 12, height: 4 };

describe('places of tags', () => {
  test('the first goes on top, as far left as the edge bears', () => {
    expect(placeTag([SQUARE], SIZE, { tags: [], glyphs: [] })).toEqual({ x: 5, y: 0, ...SIZE });
  });

  test('one keeps off the glyphs of keys, unless a tag would be covered', () => {
    const glyphs = [{ x: 10, y: 0, width: 20, height: 8 }];
    expect(placeTag([SQUARE], SIZE, { tags: [], glyphs })).toMatchObject({ x: 30, y: 0 });
    const tags = [30, 35].map((x) => ({ x, y: 0, width: 12, height: 60 }));
    const onGlyph = placeTag([SQUARE.slice(0, 2)], SIZE, { tags, glyphs });
    expect(onGlyph.x).toBeLessThan(20);
  });

  test('the next goes where none is yet', () => {
    const taken: ReturnType<typeof placeTag>[] = [];
    for (let count = 0; count < 6; count++) taken.push(placeTag([SQUARE], SIZE, { tags: taken, glyphs: [] }));
    const pairs = taken.flatMap((one, index) =>
      taken.slice(index + 1).map((other) => sharedArea(one, other, 0)),
    );
    expect(pairs.filter((shared) => shared > 0)).toEqual([]);
  });

  test('a corner in both ways is an area', () => {
    const one = { x: 0, y: 0, width: 10, height: 4 };
    expect(sharedArea(one, { x: 8, y: 3, width: 10, height: 4 }, 0)).toBe(2);
    expect(sharedArea(one, { x: 10, y: 0, width: 10, height: 4 }, 0)).toBe(0);
  });
});
