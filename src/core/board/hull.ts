import type { Point } from './point.ts';

/**
 * The convex hull of a set of points, without points on its edges, in the order in which a line turning right on
 * screen (y down) goes round them; Andrew's monotone chain (1979). Equal points count once.
 */
export function convexHull(points: readonly Point[]): readonly Point[] {
  const sorted = [...points].sort((one, other) => one.x - other.x || one.y - other.y);
  if (sorted.length < 3) return sorted;
  const upper = chainOf(sorted);
  const lower = chainOf(sorted.reverse());
  return [...upper.slice(0, -1), ...lower.slice(0, -1)];
}

function chainOf(points: readonly Point[]): Point[] {
  const chain: Point[] = [];
  for (const point of points) {
    while (chain.length > 1 && !turnsRight(chain.at(-2), chain.at(-1), point)) chain.pop();
    chain.push(point);
  }
  return chain;
}

function turnsRight(one: Point | undefined, two: Point | undefined, three: Point): boolean {
  if (one === undefined || two === undefined) return true;
  return (two.x - one.x) * (three.y - one.y) - (two.y - one.y) * (three.x - one.x) > 0;
}
