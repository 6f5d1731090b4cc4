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
    expect(placeTag([SQUARE], SIZE, [])).toEqual({ x: 10, y: 0, ...SIZE });
  });

  test('the next goes where none is yet', () => {
    const taken: ReturnType<typeof placeTag>[] = [];
    for (let count = 0; count < 6; count++) taken.push(placeTag([SQUARE], SIZE, taken));
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
