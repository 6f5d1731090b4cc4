import { overlapMm } from '../board/caps.ts';
import type { Point } from '../board/point.ts';
import type { Chord } from '../keymap/types.ts';
import { textMm } from './set-text.ts';
import { type Box, centred, LEAST_PT, type Mark, rounded } from './sheet-marks.ts';
import { chordOutlines, type PlacedCap } from './sheet-outlines.ts';
import type { SheetType } from './sheet-type.ts';

/** Outlines that follow one another in the list stand off the caps a little differently, so that shared edges part. */
const MARGINS_MM = [0.3, 0.7, 0.5];
const CORNER_MM = 2.2;
const TAG_HEIGHT_MM = 3.1;
/** Along an edge, from its middle outwards. */
const PARTS = [1 / 2, 3 / 8, 5 / 8, 1 / 4, 3 / 4, 1 / 8, 7 / 8, 1 / 16, 15 / 16, 0];
/** How far out of the outline a number may move when the edge itself has no room, mm. */
const STEPS_OUT_MM = [0, 0.7, 1.4, 2.1];

/** What the numbers of chords must keep clear of. */
export interface TagGround {
  readonly type: SheetType;
  /** Texts that stand already, as boxes; tags are added to them. */
  readonly taken: Box[];
  /** The page inside its margins. */
  readonly page: { readonly width: number; readonly height: number };
}

/** What is drawn of a chord. */
interface ChordMarks {
  readonly outlines: readonly Mark[];
  readonly tags: readonly Mark[];
  /** Every outline has its number. */
  readonly isNumbered: boolean;
}

/** The outlines of a chord and its number on each of them, where there is room for it. */
export function chordMarks(
  chord: Chord,
  number: number,
  caps: readonly PlacedCap[],
  ground: TagGround,
): ChordMarks {
  const hulls = chordOutlines(chord, caps, MARGINS_MM[(number - 1) % MARGINS_MM.length] ?? 0);
  const outlines = hulls.map(
    (hull): Mark => ({ mark: 'path', path: roundedPath(hull), stroke: 'chord', strokeMm: 0.3 }),
  );
  const tags = hulls.map((hull) => tagMarks(String(number), hull, ground));
  return { outlines, tags: tags.flat(), isNumbered: tags.every((marks) => marks.length > 0) };
}

function tagMarks(text: string, hull: readonly Point[], ground: TagGround): readonly Mark[] {
  const width = Math.max(TAG_HEIGHT_MM, textMm(ground.type, 'sans', LEAST_PT, text) + 1.5);
  const size = { width, height: TAG_HEIGHT_MM, rotation: 0 };
  const box = tagPlaces(hull)
    .map((place): Box => ({ ...place, ...size }))
    .find((each) => isFree(each, ground));
  if (box === undefined) return [];
  ground.taken.push(box);
  const round = {
    mark: 'box',
    ...box,
    radius: TAG_HEIGHT_MM / 2,
    fill: 'paper',
    stroke: 'chord',
    strokeMm: 0.25,
  } as const;
  return [
    round,
    ...centred(ground.type, [text], box.x, box.y, { face: 'sans', sizePt: LEAST_PT, ink: 'ink' }),
  ];
}

/** Points on the edges of an outline, then ever further out; on each step the longest edge first, then the document's order. */
function tagPlaces(hull: readonly Point[]): readonly Point[] {
  const edges = hull
    .map((from, index) => ({ from, to: hull[(index + 1) % hull.length] ?? from }))
    .map((edge) => ({ ...edge, length: Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y) }))
    .filter(({ length }) => length > 0)
    .toSorted((one, other) => other.length - one.length);
  return STEPS_OUT_MM.flatMap((out) =>
    PARTS.flatMap((part) =>
      edges.map(({ from, to, length }) => ({
        x: from.x + (to.x - from.x) * part + ((to.y - from.y) / length) * out,
        y: from.y + (to.y - from.y) * part - ((to.x - from.x) / length) * out,
      })),
    ),
  );
}

function isFree(box: Box, { taken, page }: TagGround): boolean {
  const inside =
    box.x - box.width / 2 >= 0 &&
    box.y - box.height / 2 >= 0 &&
    box.x + box.width / 2 <= page.width &&
    box.y + box.height / 2 <= page.height;
  return inside && !taken.some((other) => mayMeet(box, other) && overlapMm(box, other) > 0);
}

function mayMeet(one: Box, other: Box): boolean {
  const reach = Math.hypot(one.width, one.height) / 2 + Math.hypot(other.width, other.height) / 2;
  return Math.hypot(one.x - other.x, one.y - other.y) < reach;
}

/** A closed path with rounded corners, each as far as its edges allow. */
function roundedPath(corners: readonly Point[]): string {
  const parts = corners.map((corner, index) => {
    const from = towards(corner, corners.at(index - 1) ?? corner);
    const to = towards(corner, corners[(index + 1) % corners.length] ?? corner);
    return `${index === 0 ? 'M' : 'L'}${written(from)}Q${written(corner)} ${written(to)}`;
  });
  return `${parts.join('')}Z`;
}

function towards(corner: Point, other: Point): Point {
  const length = Math.hypot(other.x - corner.x, other.y - corner.y);
  const part = length === 0 ? 0 : Math.min(CORNER_MM / length, 0.5);
  return { x: corner.x + (other.x - corner.x) * part, y: corner.y + (other.y - corner.y) * part };
}

function written({ x, y }: Point): string {
  return `${rounded(x)} ${rounded(y)}`;
}
