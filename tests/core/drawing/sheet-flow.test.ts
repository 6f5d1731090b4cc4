import { describe, expect, test } from 'vitest';
import { type Block, flow, type Lane } from '../../../src/core/drawing/sheet-flow.ts';
import { textAt } from '../../../src/core/drawing/sheet-marks.ts';

const LOOK = { face: 'sans', sizePt: 8, ink: 'ink' } as const;

/** A block that only leaves its name where it was put. */
function block(name: string, height: number, more: Partial<Block> = {}): Block {
  return { height, ...more, draw: (x, y) => [textAt(name, x, y, LOOK)] };
}

/** Two lanes a page; those of the first page are `low` mm high, the others 100. */
function lanes(low: number) {
  return (index: number): Lane => {
    const page = Math.floor(index / 2);
    return { page, x: index % 2, top: 0, bottom: page === 0 ? low : 100 };
  };
}

/** Where each block came to stand: page, column, height from the top. */
function places(sections: readonly (readonly Block[])[], low: number) {
  return flow(sections, lanes(low)).flatMap(({ page, marks }) =>
    marks.flatMap((mark) => (mark.mark === 'text' ? [`${mark.text} ${page}/${mark.x}/${mark.y}`] : [])),
  );
}

describe('sections in columns', () => {
  test('one that fits stands in one column, the next beside it', () => {
    expect(places([[block('a', 30), block('b', 30)], [block('c', 50)]], 100)).toEqual([
      'a 0/0/0',
      'b 0/0/30',
      'c 0/1/0',
    ]);
  });

  test('a later short one fills what an earlier column left free', () => {
    expect(places([[block('a', 60)], [block('b', 90)], [block('c', 30, { above: 5 })]], 100)).toEqual([
      'a 0/0/0',
      'b 0/1/0',
      'c 0/0/65',
    ]);
  });

  test('columns come out even', () => {
    const four = ['a', 'b', 'c', 'd'].map((name) => [block(name, 20)]);
    expect(places(four, 100)).toEqual(['a 0/0/0', 'b 0/0/20', 'c 0/1/0', 'd 0/1/20']);
  });

  test('a heading is not left alone at the foot of a column', () => {
    const long = [
      block('x', 45),
      block('head', 5, { keepsWithNext: true }),
      block('row', 10),
      block('row 2', 30),
    ];
    expect(places([long], 55)).toEqual(['x 0/0/0', 'head 0/1/0', 'row 0/1/5', 'row 2 0/1/15']);
  });

  test('a block higher than the columns beside a board goes to the next page', () => {
    expect(places([[block('tall', 80)]], 40)).toEqual(['tall 1/0/0']);
  });

  test('a block higher than any column is not lost', () => {
    expect(places([[block('endless', 500)]], 40)).toHaveLength(1);
  });
});
