import type { BoardKey, KeyId } from '../keymap/types.ts';
import { distanceMm, minus, type Point, plus, tidy, turned } from './point.ts';

/** A line by which a key fell into place: from what it was aligned to, to the key's middle; mm. */
export interface Guide {
  readonly of: KeyId;
  readonly from: Point;
  readonly to: Point;
}

/** A place that was found for a key, and what it is in line with. */
export interface Snapped {
  readonly at: Point;
  readonly guides: readonly Guide[];
}

/** A line of another key that a key's middle may fall onto. */
interface Line {
  readonly of: BoardKey;
  /** A point on it, and its way, degrees. */
  readonly point: Point;
  readonly degrees: number;
}

/** Keys further away than this draw no guides, mm. */
const NEAR_MM = 70;
/** What a mm to the other key counts beside a mm to its line, so that of lines about as near the nearer key's is taken. */
const FAR_COUNTS = 0.004;
/** Two lines that cross under less than this are one and the same to a hand, degrees. */
const CROSSING_DEG = 20;

/**
 * Where a key falls into place near others: on the line of another key's column or row, which lean as that key does,
 * or one pitch beside it. The nearest line within reach first, then one that crosses it near the place; of equals the
 * one of the key that is first on the board. A place with no line near is rounded to a tenth of a mm.
 */
export function snapped(key: BoardKey, others: readonly BoardKey[], snap: Snap): Snapped {
  let place = snappedOnce(key, others, snap);
  for (let turn = 0; turn < MOST_TURNS && place.guides.length > 1; turn++) {
    // A key picked up where it fell must stay there: from there another line may be nearer than the one that it fell onto.
    const next = snappedOnce({ ...key, ...place.at }, others, snap);
    const stays = distanceMm(next.at, place.at) < 0.01;
    if (stays || next.guides.length < 2 || distanceMm(next.at, key) > snap.withinMm) return place;
    place = next;
  }
  return place;
}

/** How a key snaps: the gap between caps of one pitch, and how far it may be moved, mm. */
interface Snap {
  readonly gapMm: number;
  readonly withinMm: number;
}

/** So often a place is looked at again. */
const MOST_TURNS = 4;

function snappedOnce(key: BoardKey, others: readonly BoardKey[], snap: Snap): Snapped {
  const lines = others
    .filter((other) => distanceMm(other, key) <= NEAR_MM)
    .flatMap((other) => linesOf(other, key, snap.gapMm));
  const first = nearestLine(key, lines, (line) => footOn(line, key), snap.withinMm);
  if (first === undefined) return { at: tenths(key), guides: [] };
  const foot = footOn(first, key);
  const crossing = lines.filter((line) => crosses(line, first));
  const second = nearestLine(key, crossing, (line) => meetingOf(first, line), snap.withinMm);
  const at = tidied(second === undefined ? along(first, foot) : meetingOf(first, second));
  return { at, guides: [first, ...(second === undefined ? [] : [second])].map((line) => guideOf(line, at)) };
}

function linesOf(other: BoardKey, key: BoardKey, gapMm: number): readonly Line[] {
  const across = (other.width + key.width) / 2 + gapMm;
  const down = (other.height + key.height) / 2 + gapMm;
  const line = (step: Point, degrees: number): Line => ({
    of: other,
    point: plus(other, turned(step, other.rotation)),
    degrees: other.rotation + degrees,
  });
  return [
    line({ x: 0, y: 0 }, 90),
    line({ x: 0, y: 0 }, 0),
    line({ x: 0, y: down }, 0),
    line({ x: 0, y: -down }, 0),
    line({ x: across, y: 0 }, 90),
    line({ x: -across, y: 0 }, 90),
  ];
}

function nearestLine(
  key: BoardKey,
  lines: readonly Line[],
  place: (line: Line) => Point,
  withinMm: number,
): Line | undefined {
  let best: { readonly line: Line; readonly cost: number } | undefined;
  for (const line of lines) {
    const away = distanceMm(place(line), key);
    const cost = away + FAR_COUNTS * distanceMm(line.of, key);
    if (away <= withinMm && (best === undefined || cost < best.cost - 1e-9)) best = { line, cost };
  }
  return best?.line;
}

/** The point of a line that is nearest to another point. */
function footOn(line: Line, to: Point): Point {
  const seen = turned(minus(to, line.point), -line.degrees);
  return plus(line.point, turned({ x: seen.x, y: 0 }, line.degrees));
}

/** Along a line alone, the step from the line's own point is rounded to a tenth of a mm. */
function along(line: Line, foot: Point): Point {
  const step = turned(minus(foot, line.point), -line.degrees).x;
  return plus(line.point, turned({ x: Math.round(step * 10) / 10, y: 0 }, line.degrees));
}

function crosses(one: Line, other: Line): boolean {
  const between = Math.abs(one.degrees - other.degrees) % 180;
  return Math.min(between, 180 - between) > CROSSING_DEG;
}

/** Where two lines that are not parallel meet. */
function meetingOf(one: Line, other: Line): Point {
  const seen = turned(minus(other.point, one.point), -one.degrees);
  const way = turned({ x: 1, y: 0 }, other.degrees - one.degrees);
  return plus(one.point, turned({ x: seen.x - (seen.y / way.y) * way.x, y: 0 }, one.degrees));
}

function guideOf(line: Line, at: Point): Guide {
  const isThere = distanceMm(line.point, at) < 1;
  return { of: line.of.id, from: isThere ? { x: line.of.x, y: line.of.y } : line.point, to: at };
}

function tidied({ x, y }: Point): Point {
  return { x: tidy(x), y: tidy(y) };
}

function tenths({ x, y }: Point): Point {
  return { x: Math.round(x * 10) / 10 + 0, y: Math.round(y * 10) / 10 + 0 };
}

/** Turns fall onto every fifth degree and onto the turns of other keys, degrees. */
const TURN_STEP = 5;
const TURN_NEAR = 1.2;

/** The turn that a key falls into near others: as they lie, or a multiple of five degrees; else whole degrees. */
export function snappedTurn(degrees: number, others: readonly BoardKey[]): number {
  const offered = [...others.map(({ rotation }) => rotation), Math.round(degrees / TURN_STEP) * TURN_STEP];
  const near = offered.filter((each) => Math.abs(each - degrees) <= TURN_NEAR);
  const best = near.sort((one, other) => Math.abs(one - degrees) - Math.abs(other - degrees))[0];
  return best ?? Math.round(degrees);
}
