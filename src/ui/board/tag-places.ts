import type { Point } from '../../core/board/point.ts';

/** An upright rectangle by its centre and size, mm. */
export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

/** Around a tag that stands already, mm. */
const CLEAR_MM = 0.4;

/**
 * Where a tag is put: on the middle of one of its outlines' edges, where it covers least of the tags that stand
 * already; of equals the topmost, then the leftmost.
 */
export function placeTag(
  hulls: readonly (readonly Point[])[],
  size: { readonly width: number; readonly height: number },
  taken: readonly Box[],
): Box {
  const places = hulls.flatMap(edgePlaces).map((middle) => ({ ...middle, ...size }));
  const judged = places.map((box) => ({ box, covered: coveredBy(box, taken) }));
  judged.sort(
    (one, other) => one.covered - other.covered || one.box.y - other.box.y || one.box.x - other.box.x,
  );
  return judged[0]?.box ?? { x: 0, y: 0, ...size };
}

/** Middles and quarter points of the edges that are long enough to bear a tag. */
function edgePlaces(hull: readonly Point[]): Point[] {
  return hull.flatMap((from, index) => {
    const to = hull[(index + 1) % hull.length] ?? from;
    if (Math.hypot(to.x - from.x, to.y - from.y) < 8) return [];
    return [0.5, 0.25, 0.75].map((part) => ({
      x: from.x + (to.x - from.x) * part,
      y: from.y + (to.y - from.y) * part,
    }));
  });
}

function coveredBy(box: Box, taken: readonly Box[]): number {
  return taken.reduce((sum, other) => sum + sharedArea(box, other), 0);
}

/** What two boxes share, with some air around them, mm². */
export function sharedArea(one: Box, other: Box, clear: number = CLEAR_MM): number {
  const across = (one.width + other.width) / 2 + clear - Math.abs(one.x - other.x);
  const down = (one.height + other.height) / 2 + clear - Math.abs(one.y - other.y);
  return across > 0 && down > 0 ? across * down : 0;
}
