import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { overlappingCaps } from '../../../src/core/board/caps.ts';
import { parametricBoard } from '../../../src/core/board/parametric.ts';
import { distanceMm } from '../../../src/core/board/point.ts';
import { boardSchema } from '../../../src/core/keymap/schema.ts';
import type { BoardKey, MadeFrom } from '../../../src/core/keymap/types.ts';
import { readyBoard, sensibleBoards } from './boards.ts';

const PLAIN: MadeFrom = {
  columns: [
    { finger: 'index', keys: 3, homeRow: 1, staggerMm: 0, splayDeg: 0 },
    { finger: 'middle', keys: 2, homeRow: 0, staggerMm: 4, splayDeg: 10 },
  ],
  pitchXMm: 20,
  pitchYMm: 18,
  capGapMm: 2,
  thumb: { keys: 2, radiusMm: 100, inwardsMm: 5, downMm: 40, turnDeg: 0, stepDeg: 0 },
  gapMm: 30,
  turnDeg: 0,
};

function keyOf(madeFrom: MadeFrom, id: string): BoardKey {
  const key = parametricBoard(madeFrom, 'test').keys.find((each) => each.id === id);
  if (key === undefined) throw new Error(`no key ${id}`);
  return key;
}

describe('parametric board', () => {
  test('keys are named by hand, row from the top and column from the inner one', () => {
    const ids = parametricBoard(PLAIN, 'test').keys.map((key) => key.id);
    expect(ids).toEqual([
      ...['L11', 'L21', 'L22', 'L31', 'L32', 'LT1', 'LT2'],
      ...['R11', 'R21', 'R22', 'R31', 'R32', 'RT1', 'RT2'],
    ]);
  });

  test('the gap lies between the edges of the inner columns’ cells', () => {
    expect(keyOf(PLAIN, 'R21').x - keyOf(PLAIN, 'L21').x).toBe(PLAIN.gapMm + PLAIN.pitchXMm);
  });

  test('caps are smaller than their cells by the gap between caps', () => {
    expect(keyOf(PLAIN, 'R21')).toMatchObject({ width: 18, height: 16 });
  });

  test('splay leans a column’s top outwards, stagger moves it towards the typist', () => {
    const [top, bottom] = [keyOf(PLAIN, 'R22'), keyOf(PLAIN, 'R32')];
    expect(top.rotation).toBe(10);
    expect(top.x).toBeGreaterThan(bottom.x);
    expect((top.y + bottom.y) / 2).toBeCloseTo(4, 2);
    expect(distanceMm(top, bottom)).toBeCloseTo(PLAIN.pitchYMm, 2);
  });

  test('a splayed column moves out just as far as its cells need to stay clear of its neighbour’s', () => {
    const { rotation, y, x } = keyOf(PLAIN, 'R32');
    const corner = {
      along: Math.cos((rotation * Math.PI) / 180) * 10,
      down: Math.sin((rotation * Math.PI) / 180) * 9,
    };
    // The lower inner corner of the lower cell lies on the inner column's outer edge.
    expect(x - corner.along - corner.down).toBeCloseTo(keyOf(PLAIN, 'R21').x + 10, 2);
    expect(y).toBeGreaterThan(0);
  });

  test('a positive turn of the halves brings the thumbs towards each other', () => {
    const turned = { ...PLAIN, turnDeg: 10 };
    expect(keyOf(turned, 'RT1').x).toBeLessThan(keyOf(PLAIN, 'RT1').x);
    expect(keyOf(turned, 'R11').rotation).toBe(10);
    expect(keyOf(turned, 'L11').rotation).toBe(-10);
  });

  test('a left half with parameters of its own leaves the right one alone, and lies as much nearer as it says', () => {
    const { columns, thumb } = PLAIN;
    const left = { columns: columns.slice(0, 1), thumb: { ...thumb, keys: 1 }, turnDeg: 0, downMm: 6 };
    const keys = parametricBoard({ ...PLAIN, left }, 'test').keys;
    expect(keys.map((key) => key.id)).toEqual([
      ...['L11', 'L21', 'L31', 'LT1'],
      ...['R11', 'R21', 'R22', 'R31', 'R32', 'RT1', 'RT2'],
    ]);
    expect(keys.filter((key) => key.hand === 'right')).toEqual(
      parametricBoard(PLAIN, 'test').keys.filter((key) => key.hand === 'right'),
    );
    expect(keyOf({ ...PLAIN, left }, 'L21')).toMatchObject({ x: -keyOf(PLAIN, 'R21').x, y: 6 });
  });

  test('thumb caps lie on the arc, tangent to it, and lean towards the other hand', () => {
    const thumb = { keys: 3, radiusMm: 80, inwardsMm: 20, downMm: 50, turnDeg: 30, stepDeg: 15 };
    const caps = ['RT1', 'RT2', 'RT3'].map((id) => keyOf({ ...PLAIN, thumb }, id));
    expect(caps.map((cap) => cap.rotation)).toEqual([-30, -15, 0]);
    const outer = caps[2];
    const centre = { x: outer?.x ?? 0, y: (outer?.y ?? 0) + 80 };
    for (const cap of caps) expect(distanceMm(cap, centre)).toBeCloseTo(80, 2);
  });

  test.each([
    { stepDeg: 15, bulge: 'away from' },
    { stepDeg: -15, bulge: 'towards' },
  ])('a step of $stepDeg degrees bulges the arc $bulge the typist and runs outwards', ({ stepDeg }) => {
    const thumb = { keys: 3, radiusMm: 80, inwardsMm: 20, downMm: 50, turnDeg: stepDeg, stepDeg };
    const [inner, middle, outer] = ['RT1', 'RT2', 'RT3'].map((id) => keyOf({ ...PLAIN, thumb }, id));
    expect(inner?.x).toBeLessThan(middle?.x ?? 0);
    expect(middle?.x).toBeLessThan(outer?.x ?? 0);
    expect(Math.sign((inner?.y ?? 0) - (middle?.y ?? 0))).toBe(Math.sign(stepDeg));
  });

  test('an inner column of the index finger has no home key of its own', () => {
    const board = readyBoard('split-36');
    const homes = board.keys.filter((key) => key.home).map((key) => key.id);
    expect(homes).toEqual(['L22', 'L23', 'L24', 'L25', 'LT2', 'R22', 'R23', 'R24', 'R25', 'RT2']);
  });

  test('one more outer column leaves every id with its finger', () => {
    const smaller = readyBoard('split-36');
    const larger = new Map(readyBoard('split-42').keys.map((key) => [key.id, key]));
    for (const { id, finger, hand, home } of smaller.keys) {
      expect(larger.get(id)).toMatchObject({ finger, hand, home });
    }
  });

  test.prop([sensibleBoards], { numRuns: 400 })('a sensible one has no overlapping caps', (madeFrom) => {
    expect(overlappingCaps(parametricBoard(madeFrom, 'any'))).toEqual([]);
  });

  test.prop([sensibleBoards], { numRuns: 200 })(
    'is what the document allows, ids unique, halves mirrored',
    (madeFrom) => {
      const board = parametricBoard(madeFrom, 'any');
      expect(boardSchema.safeParse(board).success).toBe(true);
      expect(new Set(board.keys.map((key) => key.id)).size).toBe(board.keys.length);
      const half = board.keys.length / 2;
      board.keys.slice(0, half).forEach((left, index) => {
        const right = board.keys[half + index];
        expect(right).toMatchObject({ y: left.y, finger: left.finger, home: left.home });
        expect(right?.x).toBeCloseTo(-left.x, 9);
        expect(right?.rotation).toBeCloseTo(-left.rotation, 9);
      });
    },
  );

  test.prop([sensibleBoards], { numRuns: 200 })('keys of one column are one pitch apart', (madeFrom) => {
    const keys = parametricBoard(madeFrom, 'any').keys;
    for (const key of keys.filter((each) => each.finger !== 'thumb')) {
      const below = keys.find((other) => other.id === `${key.id[0]}${Number(key.id[1]) + 1}${key.id[2]}`);
      if (below !== undefined) expect(distanceMm(key, below)).toBeCloseTo(madeFrom.pitchYMm, 2);
    }
  });

  test.prop([fc.integer({ min: 0, max: 5 })])(
    'a home row beyond the column’s end is no home key',
    (homeRow) => {
      const columns = [{ finger: 'index' as const, keys: 2, homeRow, staggerMm: 0, splayDeg: 0 }];
      const homes = parametricBoard({ ...PLAIN, columns }, 'any').keys.filter(
        (key) => key.finger === 'index' && key.home,
      );
      expect(homes).toHaveLength(homeRow < 2 ? 2 : 0);
    },
  );
});
