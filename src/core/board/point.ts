/** A point on the board's plane, mm; y grows towards the typist. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** Turns a point about the origin, degrees, clockwise as the typist sees it (y grows towards the typist). */
export function turned(point: Point, degrees: number): Point {
  const angle = (degrees * Math.PI) / 180;
  const cos = Math.cos(angle);
  const sin = Math.sin(angle);
  return { x: point.x * cos - point.y * sin, y: point.x * sin + point.y * cos };
}

/** The sum of two vectors. */
export function plus(one: Point, other: Point): Point {
  return { x: one.x + other.x, y: one.y + other.y };
}

/** The way from the second point to the first. */
export function minus(one: Point, other: Point): Point {
  return { x: one.x - other.x, y: one.y - other.y };
}

/** Straight distance between two points, mm. */
export function distanceMm(one: Point, other: Point): number {
  return Math.hypot(one.x - other.x, one.y - other.y);
}

/** Thousandths of a millimetre or degree, and no negative zero. */
export function tidy(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}
