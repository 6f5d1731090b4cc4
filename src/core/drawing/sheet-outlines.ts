import clipping, { type Polygon } from 'polygon-clipping';
import { capCorners } from '../board/caps.ts';
import { minus, type Point, plus, turned } from '../board/point.ts';
import type { Chord, KeyId } from '../keymap/types.ts';
import type { Box } from './sheet-marks.ts';

/** A cap as it lies on the page. */
export interface PlacedCap extends Box {
  readonly id: KeyId;
  readonly hand: 'left' | 'right';
}

/** Caps whose facing edges are no further apart than this part of their size lie side by side. */
const NEIGHBOURS = 0.35;
/** The least length along which two caps must face one another for an outline to run round both, mm. */
const LEAST_FACING_MM = 2;

/**
 * The outlines of a chord, as corners: round each group of its keys that lie side by side, along the caps' edges, so
 * that none runs over another key. Left hand before right, otherwise in the board's order.
 */
export function chordOutlines(
  chord: Chord,
  caps: readonly PlacedCap[],
  marginMm: number,
): readonly (readonly Point[])[] {
  const own = caps.filter(({ id }) => chord.keys.includes(id));
  const hands = (['left', 'right'] as const).map((hand) => own.filter((cap) => cap.hand === hand));
  return hands.flatMap((hand) => outlinesOf(hand, marginMm));
}

/** Edges that lie along each other but for a hair are more than the union can take: it is tried on ever coarser grids, mm. */
const GRIDS_MM = [0.01, 0.04, 0.15];

function outlinesOf(caps: readonly PlacedCap[], marginMm: number): readonly (readonly Point[])[] {
  const shapes = caps.map((cap) => capCorners(cap, marginMm));
  const links = caps.flatMap((one, at) =>
    caps.slice(at + 1).flatMap((other) => linkOf(one, other, marginMm)),
  );
  for (const grid of GRIDS_MM) {
    const united = unionOf([...shapes, ...links].map((corners) => polygonOn(corners, grid)));
    if (united !== null) return united.flatMap(([outer]) => (outer === undefined ? [] : [cornersOf(outer)]));
  }
  // Still true, if less fair to look at: an outline round each key.
  return shapes;
}

/** Null where the library gives up on the shapes, which it says by throwing. */
function unionOf([first, ...rest]: readonly Polygon[]): readonly Polygon[] | null {
  if (first === undefined) return [];
  try {
    return clipping.union(first, ...rest);
  } catch {
    return null;
  }
}

function polygonOn(corners: readonly Point[], gridMm: number): Polygon {
  const snapped = (mm: number) => Math.round(mm / gridMm) * gridMm;
  return [corners.map(({ x, y }): [number, number] => [snapped(x), snapped(y)])];
}

/** The ring without the repeated first point, clockwise as the typist sees it, as all outlines here are. */
function cornersOf(ring: readonly (readonly [number, number])[]): readonly Point[] {
  const corners = ring.slice(0, -1).map(([x, y]) => ({ x, y }));
  const area = corners.reduce((sum, { x, y }, at) => {
    const next = corners[(at + 1) % corners.length] ?? { x, y };
    return sum + x * next.y - next.x * y;
  }, 0);
  return area < 0 ? corners.toReversed() : corners;
}

/** What joins two caps that lie side by side: from edge to edge, as far as they face one another. */
function linkOf(one: Box, other: Box, marginMm: number): readonly (readonly Point[])[] {
  const side = sideTowards(one, other);
  const length = side.along === 'y' ? one.height : one.width;
  const seen = capCorners(other, marginMm).map((corner) => turned(minus(corner, one), -one.rotation));
  const depths = seen.map((corner) => side.sign * (side.along === 'y' ? corner.x : corner.y));
  const places = seen.map((corner) => (side.along === 'y' ? corner.y : corner.x));
  const edge = (side.along === 'y' ? one.width : one.height) / 2;
  const gap = Math.min(...depths) + marginMm - edge;
  const from = Math.max(-length / 2, Math.min(...places) + marginMm) - marginMm;
  const to = Math.min(length / 2, Math.max(...places) - marginMm) + marginMm;
  if (to - from < LEAST_FACING_MM || gap > NEIGHBOURS * Math.max(edge * 2, length)) return [];
  const inner = edge * 0.5;
  const outer = edge + gap + edge * 0.3;
  const corners = [
    [inner, from],
    [outer, from],
    [outer, to],
    [inner, to],
  ] as const;
  return [corners.map(([depth, place]) => plus(turned(atSide(side, depth, place), one.rotation), one))];
}

interface Facing {
  /** The direction of the edge in the cap's own frame. */
  readonly along: 'x' | 'y';
  readonly sign: 1 | -1;
}

/** Which of a cap's edges looks towards another cap. */
function sideTowards(one: Box, other: Box): Facing {
  const way = turned(minus(other, one), -one.rotation);
  const across = Math.abs(way.x) / one.width > Math.abs(way.y) / one.height;
  return across ? { along: 'y', sign: way.x < 0 ? -1 : 1 } : { along: 'x', sign: way.y < 0 ? -1 : 1 };
}

function atSide({ along, sign }: Facing, depth: number, place: number): Point {
  return along === 'y' ? { x: sign * depth, y: place } : { x: place, y: sign * depth };
}
