import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import { type Point, plus, turned } from './point.ts';

/** The smallest upright rectangle around a board's caps, mm. */
export interface Extent {
  readonly minX: number;
  readonly minY: number;
  readonly maxX: number;
  readonly maxY: number;
}

/** Two caps that share less depth than this, mm, only touch: places are rounded to thousandths. */
const TOUCHING_MM = 0.01;

type Cap = Pick<BoardKey, 'x' | 'y' | 'width' | 'height' | 'rotation'>;

/** The four corners of a cap as it lies on the board, clockwise from its upper left one, mm. */
export function capCorners(key: Cap, marginMm = 0): readonly Point[] {
  const halfWidth = key.width / 2 + marginMm;
  const halfHeight = key.height / 2 + marginMm;
  const corners = [
    { x: -halfWidth, y: -halfHeight },
    { x: halfWidth, y: -halfHeight },
    { x: halfWidth, y: halfHeight },
    { x: -halfWidth, y: halfHeight },
  ];
  return corners.map((corner) => plus(turned(corner, key.rotation), key));
}

/**
 * How deep two caps lie in one another, mm, by the separating-axis test over the two edges' directions of each;
 * 0 or less where a straight line fits between them.
 */
export function overlapMm(one: Cap, other: Cap): number {
  const axes = [one.rotation, one.rotation + 90, other.rotation, other.rotation + 90];
  const corners = capCorners(one);
  const others = capCorners(other);
  return Math.min(...axes.map((degrees) => sharedAlong(turned({ x: 1, y: 0 }, degrees), corners, others)));
}

function sharedAlong(axis: Point, corners: readonly Point[], others: readonly Point[]): number {
  const along = (point: Point) => point.x * axis.x + point.y * axis.y;
  const mine = corners.map(along);
  const theirs = others.map(along);
  return Math.min(Math.max(...mine) - Math.min(...theirs), Math.max(...theirs) - Math.min(...mine));
}

/** All pairs of keys whose caps overlap, in the board's order; caps that only touch do not. */
export function overlappingCaps(board: Board): readonly (readonly [KeyId, KeyId])[] {
  const pairs: (readonly [KeyId, KeyId])[] = [];
  board.keys.forEach((one, index) => {
    for (const other of board.keys.slice(index + 1)) {
      if (mayMeet(one, other) && overlapMm(one, other) > TOUCHING_MM) pairs.push([one.id, other.id]);
    }
  });
  return pairs;
}

/** Cheap first look: caps whose surrounding circles are apart cannot overlap. */
function mayMeet(one: Cap, other: Cap): boolean {
  const reach = Math.hypot(one.width, one.height) / 2 + Math.hypot(other.width, other.height) / 2;
  return Math.hypot(one.x - other.x, one.y - other.y) < reach;
}

/** The smallest upright rectangle that holds every cap of the board, mm. */
export function boardExtent(board: Board): Extent {
  const corners = board.keys.flatMap((key) => capCorners(key));
  const xs = corners.map((corner) => corner.x);
  const ys = corners.map((corner) => corner.y);
  return { minX: Math.min(...xs), minY: Math.min(...ys), maxX: Math.max(...xs), maxY: Math.max(...ys) };
}
