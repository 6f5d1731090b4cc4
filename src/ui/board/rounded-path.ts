import { distanceMm, minus, type Point, plus } from '../../core/board/point.ts';

/** A closed SVG path round the corners of a polygon, each corner rounded by the radius as far as its edges allow, mm. */
export function roundedPath(corners: readonly Point[], radiusMm: number): string {
  const parts = corners.map((corner, index) => {
    const before = corners.at(index - 1) ?? corner;
    const after = corners[(index + 1) % corners.length] ?? corner;
    const from = towards(corner, before, radiusMm);
    const to = towards(corner, after, radiusMm);
    return `${index === 0 ? 'M' : 'L'}${written(from)}Q${written(corner)} ${written(to)}`;
  });
  return `${parts.join('')}Z`;
}

/** The point that lies the radius away from a corner towards another, half way at most. */
function towards(corner: Point, other: Point, radiusMm: number): Point {
  const length = distanceMm(corner, other);
  if (length === 0) return corner;
  const part = Math.min(radiusMm / length, 0.5);
  const way = minus(other, corner);
  return plus(corner, { x: way.x * part, y: way.y * part });
}

function written({ x, y }: Point): string {
  return `${x.toFixed(2)} ${y.toFixed(2)}`;
}
