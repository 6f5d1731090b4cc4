import type { Board, BoardKey, Finger, Hand, MadeFrom } from '../keymap/types.ts';
import { type Point, plus, tidy, turned } from './point.ts';

/**
 * Boards of two halves out of a few parameters. A half is laid out as the right one: x grows outwards,
 * away from the other hand, the origin is the inner column's middle row without its stagger, and turns are
 * clockwise, which for the right half is outwards.
 */
type Column = MadeFrom['columns'][number];

const HANDS: readonly Hand[] = ['left', 'right'];

/** A key of the half before it is given to a hand. */
interface HalfKey extends Point {
  /** What follows the hand's letter in the id. */
  readonly mark: string;
  readonly rotation: number;
  readonly finger: Finger;
  readonly home: boolean;
}

/**
 * The board that the parameters describe. Ids are the hand's letter, the row and the column: `L21` is the left
 * hand's second row from the top, first column counted from the inner one, so that a board with one more outer
 * column keeps every id; thumb keys are `LT1`, `LT2`… from the inner one. Left hand first, row by row.
 */
export function parametricBoard(madeFrom: MadeFrom, name: string): Board {
  const keys = HANDS.flatMap((hand) => {
    const half = halfOf(madeFrom, hand);
    return [...columnKeys(half), ...thumbKeys(half)].map((key) => ofHand(key, hand, half));
  });
  return { name, madeFrom, keys };
}

/** The parameters of one half, written as those of a right one; `downMm` is its own way towards the typist. */
export type Half = Omit<MadeFrom, 'left'> & { readonly downMm: number };

/** What one hand's half is made from; a left half without parameters of its own is the right one's mirror image. */
export function halfOf(madeFrom: MadeFrom, hand: Hand): Half {
  const { left, ...right } = madeFrom;
  return hand === 'left' && left !== undefined ? { ...right, ...left } : { ...right, downMm: 0 };
}

function ofHand(key: HalfKey, hand: Hand, half: Half): BoardKey {
  const place = onBoard(key, hand, half);
  return {
    id: `${hand === 'right' ? 'R' : 'L'}${key.mark}`,
    ...place,
    width: tidy(half.pitchXMm - half.capGapMm),
    height: tidy(half.pitchYMm - half.capGapMm),
    hand,
    finger: key.finger,
    home: key.home,
  };
}

/** Where something lies, and how it is turned, degrees. */
type Pose = Point & { readonly rotation: number };

/** A pose on a half as it lies on the board. Thumbs towards each other: the right half's lower end goes left, which is clockwise. */
export function onBoard(pose: Pose, hand: Hand, half: Half): Pose {
  const sign = hand === 'right' ? 1 : -1;
  const place = turned(pose, half.turnDeg);
  return {
    x: tidy(sign * (middleOfInner(half) + place.x)),
    y: tidy(place.y + half.downMm),
    rotation: tidy(sign * (pose.rotation + half.turnDeg)),
  };
}

/** A pose on the board as its half has it: what `onBoard` puts back. */
export function onHalf(pose: Pose, hand: Hand, half: Half): Pose {
  const sign = hand === 'right' ? 1 : -1;
  const place = { x: sign * pose.x - middleOfInner(half), y: pose.y - half.downMm };
  return { ...turned(place, -half.turnDeg), rotation: sign * pose.rotation - half.turnDeg };
}

/** From the middle of the board to the inner column's, mm. */
function middleOfInner(half: Half): number {
  return (half.gapMm + half.pitchXMm) / 2;
}

function columnKeys(half: Half): HalfKey[] {
  const rows = homeRows(half);
  const rowsAbove = Math.max(...rows);
  const keys = columnMiddles(half).flatMap((middle, index) => {
    const column = half.columns[index];
    return column === undefined
      ? []
      : keysOfColumn(column, index, middle, half.pitchYMm, rowsAbove - (rows[index] ?? 0));
  });
  return keys.sort((one, other) => Number(one.mark) - Number(other.mark));
}

function keysOfColumn(
  column: Column,
  index: number,
  middle: Point,
  pitchYMm: number,
  rowsAbove: number,
): HalfKey[] {
  return Array.from({ length: column.keys }, (_, row) => {
    const fromMiddle = { x: 0, y: (row - (column.keys - 1) / 2) * pitchYMm };
    return {
      ...plus(middle, turned(fromMiddle, column.splayDeg)),
      mark: `${rowsAbove + row + 1}${index + 1}`,
      rotation: column.splayDeg,
      finger: column.finger,
      home: row === column.homeRow,
    };
  });
}

/** Each column's middle row: one pitch from its inner neighbour, and as much more as the splay of the two asks for. */
function columnMiddles(half: Half): Point[] {
  let x = 0;
  let inner: Column | undefined;
  return half.columns.map((column) => {
    if (inner !== undefined) x += stepToNext(inner, column, half);
    inner = column;
    return { x, y: column.staggerMm };
  });
}

/**
 * The least distance outwards at which the cells of two columns, taken as turned rectangles, lie beside each other
 * without overlap: along an edge of one of them the sum of both half extents fits between the middles.
 */
function stepToNext(inner: Column, outer: Column, half: Half): number {
  const down = outer.staggerMm - inner.staggerMm;
  const steps = [inner.splayDeg, outer.splayDeg].map((degrees) => {
    const axis = turned({ x: 1, y: 0 }, degrees);
    const needed = halfAlong(inner, degrees, half) + halfAlong(outer, degrees, half);
    return (needed - axis.y * down) / axis.x;
  });
  return Math.min(...steps);
}

/** Half of what a column's cells take up along a direction, mm. */
function halfAlong(column: Column, degrees: number, half: Half): number {
  const across = turned({ x: 1, y: 0 }, degrees - column.splayDeg);
  return (Math.abs(across.x) * half.pitchXMm + Math.abs(across.y) * column.keys * half.pitchYMm) / 2;
}

/** Which key of each column lies in the home row, counted from 0: its own, else the one nearest to its finger's. */
export function homeRows(half: Half): readonly number[] {
  return half.columns.map((column) => {
    if (hasHome(column)) return column.homeRow ?? 0;
    const model =
      half.columns.find((other) => hasHome(other) && other.finger === column.finger) ??
      half.columns.find(hasHome);
    const middle = (column.keys - 1) / 2;
    if (model === undefined) return Math.floor(middle);
    const homeAt = model.staggerMm + ((model.homeRow ?? 0) - (model.keys - 1) / 2) * half.pitchYMm;
    const nearest = Math.round(middle + (homeAt - column.staggerMm) / half.pitchYMm);
    return Math.min(Math.max(nearest, 0), column.keys - 1);
  });
}

function hasHome(column: Column): boolean {
  return column.homeRow !== null && column.homeRow < column.keys;
}

/**
 * Caps on an arc, tangent to it, from the inner one outwards. A positive turn leans a cap's top towards the other
 * hand, a positive step takes that lean back from cap to cap; a step of 0 makes a straight line at the column pitch.
 */
function thumbKeys(half: Half): HalfKey[] {
  const { thumb } = half;
  const inner = { x: -thumb.inwardsMm, y: (half.columns[0]?.staggerMm ?? 0) + thumb.downMm };
  return Array.from({ length: thumb.keys }, (_, index) => {
    const rotation = index * thumb.stepDeg - thumb.turnDeg;
    return {
      ...plus(inner, alongArc(thumb, index, half.pitchXMm)),
      mark: `T${index + 1}`,
      rotation,
      finger: 'thumb' as const,
      // No parameter says where the thumb rests: the middle cap, of an even number the outer of the two.
      home: index === Math.floor(thumb.keys / 2),
    };
  });
}

/** From the inner cap to the one so many steps outwards. */
function alongArc(thumb: MadeFrom['thumb'], index: number, pitchXMm: number): Point {
  if (thumb.stepDeg === 0) return turned({ x: index * pitchXMm, y: 0 }, -thumb.turnDeg);
  // The arc bulges away from the typist; with a negative step it bulges towards them.
  const toCentre = { x: 0, y: Math.sign(thumb.stepDeg) * thumb.radiusMm };
  const centre = turned(toCentre, -thumb.turnDeg);
  const back = turned({ x: 0, y: -toCentre.y }, index * thumb.stepDeg - thumb.turnDeg);
  return plus(centre, back);
}
