import type { Point } from '../../core/board/point.ts';

/** An upright rectangle by its centre and size, mm. */
export interface Box extends Point {
  readonly width: number;
  readonly height: number;
}

/** Around a tag that stands already, mm. */
const CLEAR_MM = 0.4;

/** What lies on the board already: tags, which a new one must not cover, and glyphs, which it should not. */
export interface Ground {
  readonly tags: readonly Box[];
  readonly glyphs: readonly Box[];
}

/** Covering a tag counts so much more than covering as much of a glyph. */
const TAG_COUNTS = 8;

/**
 * Where a tag is put: on an edge of one of its outlines, where it covers least of what lies there already; of equals
 * the topmost, then the leftmost.
 */
export function placeTag(
  hulls: readonly (readonly Point[])[],
  size: { readonly width: number; readonly height: number },
  ground: Ground,
): Box {
  const places = hulls.flatMap(edgePlaces).map((middle) => ({ ...middle, ...size }));
  const judged = places.map((box) => ({ box, covered: coveredBy(box, ground) }));
  judged.sort(
    (one, other) => one.covered - other.covered || one.box.y - other.box.y || one.box.x - other.box.x,
  );
  return judged[0]?.box ?? { x: 0, y: 0, ...size };
}

/** How far along an edge a tag may stand, the middle first. */
const PARTS = [1 / 2, 1 / 4, 3 / 4, 1 / 8, 3 / 8, 5 / 8, 7 / 8];

/** Points along the edges that are long enough to bear a tag. */
function edgePlaces(hull: readonly Point[]): Point[] {
  return hull.flatMap((from, index) => {
    const to = hull[(index + 1) % hull.length] ?? from;
    if (Math.hypot(to.x - from.x, to.y - from.y) < 8) return [];
    return PARTS.map((part) => ({
      x: from.x + (to.x - from.x) * part,
      y: from.y + (to.y - from.y) * part,
    }));
  });
}

function coveredBy(box: Box, { tags, glyphs }: Ground): number {
  const ofTags = tags.reduce((sum, tag) => sum + sharedArea(box, tag), 0);
  return glyphs.reduce((sum, glyph) => sum + sharedArea(box, glyph, 0), ofTags * TAG_COUNTS);
}

/** What two boxes share, with some air around them, mm². */
export function sharedArea(one: Box, other: Box, clear: number = CLEAR_MM): number {
  const across = (one.width + other.width) / 2 + clear - Math.abs(one.x - other.x);
  const down = (one.height + other.height) / 2 + clear - Math.abs(one.y - other.y);
  return across > 0 && down > 0 ? across * down : 0;
}
