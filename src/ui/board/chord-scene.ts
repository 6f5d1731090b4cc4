import { capCorners } from '../../core/board/caps.ts';
import { convexHull } from '../../core/board/hull.ts';
import { type Point, plus, turned } from '../../core/board/point.ts';
import { chordDoes, legendOf } from '../../core/host/legend.ts';
import { chordsOf, layersOfChord } from '../../core/keymap/timing.ts';
import type { Board, BoardKey, Chord, ChordId, KeyId } from '../../core/keymap/types.ts';
import { textWidth } from './fit-text.ts';
import type { KeySceneSource } from './key-scene.ts';
import { roundedPath } from './rounded-path.ts';
import { type Box, placeTag } from './tag-places.ts';

/** A chord's small sheet with what it gives and its window; x and y are its centre, mm. */
export interface ChordTag extends Box {
  readonly gives: string;
  readonly window: string;
}

/** A chord as it is drawn: an outline for each hand that takes part, and a tag. */
export interface ChordScene {
  readonly id: ChordId;
  readonly keys: readonly KeyId[];
  /** Live on the layer in front. */
  readonly live: boolean;
  readonly outlines: readonly string[];
  /** Middles of the keys, where an outline also goes over a key that has no part in the chord. */
  readonly knots: readonly Point[];
  /** Joins the outlines of two hands; null where one hand plays it. */
  readonly bridge: { readonly from: Point; readonly to: Point } | null;
  /** Only chords that are live have one. */
  readonly tag: ChordTag | null;
  readonly label: string;
}

/** How far outlines stand off the caps, mm: neighbours in the list differ, so that shared edges stay apart. */
const MARGINS_MM = [0.45, -0.45, -1.3];
const CORNER_MM = 3.2;
const TAG_TEXT_MM = 2.6;
const TAG_HEIGHT_MM = 4;
/** The most of a legend that a tag shows, in characters. */
const TAG_CHARS = 9;

/** The outlines and tags of all chords, in the document's order; tags keep clear of each other where they can. */
export function chordScenes(source: KeySceneSource): readonly ChordScene[] {
  const taken: Box[] = [];
  const glyphs = source.keymap.board.keys.map(glyphBox);
  return chordsOf(source.keymap).map((chord, index) => {
    const margin = MARGINS_MM[index % MARGINS_MM.length] ?? 0;
    const live = layersOfChord(source.keymap, chord).includes(source.frontLayer);
    return chordScene(chord, source, { margin, live, taken, glyphs });
  });
}

interface Manner {
  readonly margin: number;
  readonly live: boolean;
  /** Tags that stand already; a new one is added. */
  readonly taken: Box[];
  readonly glyphs: readonly Box[];
}

/** Where a key's glyph in front stands, mm: left of the middle, since the ladder takes the right. */
function glyphBox(key: BoardKey): Box {
  const middle = plus(key, turned({ x: -key.width * 0.15, y: -key.height * 0.08 }, key.rotation));
  return { ...middle, width: key.width * 0.5, height: key.height * 0.5 };
}

function chordScene(chord: Chord, source: KeySceneSource, manner: Manner): ChordScene {
  const { board } = source.keymap;
  const keys = chord.keys.flatMap((id) => board.keys.find((key) => key.id === id) ?? []);
  const hulls = handsOf(keys).map((hand) => hullOf(hand, manner.margin));
  const [one, other] = hulls.map(middleOf);
  return {
    id: chord.id,
    keys: chord.keys,
    live: manner.live,
    outlines: hulls.map((hull) => roundedPath(hull, CORNER_MM)),
    knots: hulls.some((hull) => coversOthers(hull, keys, board)) ? keys.map(({ x, y }) => ({ x, y })) : [],
    bridge: one !== undefined && other !== undefined ? { from: one, to: other } : null,
    tag: manner.live ? tagOf(chord, hulls, source, manner) : null,
    label: `chord ${chordDoes(chord, source)}, ${chord.windowMs} ms`,
  };
}

function handsOf(keys: readonly BoardKey[]): readonly (readonly BoardKey[])[] {
  const hands = (['left', 'right'] as const).map((hand) => keys.filter((key) => key.hand === hand));
  return hands.filter((hand) => hand.length > 0);
}

function hullOf(keys: readonly BoardKey[], marginMm: number): readonly Point[] {
  return convexHull(keys.flatMap((key) => capCorners(key, marginMm)));
}

function middleOf(points: readonly Point[]): Point {
  const sum = points.reduce((all, { x, y }) => ({ x: all.x + x, y: all.y + y }), { x: 0, y: 0 });
  return { x: sum.x / points.length, y: sum.y / points.length };
}

function coversOthers(hull: readonly Point[], keys: readonly BoardKey[], board: Board): boolean {
  return board.keys.some((key) => !keys.includes(key) && isInside(key, hull));
}

/** The hull goes round with its inside on the right of each edge, as `convexHull` returns it. */
function isInside(point: Point, hull: readonly Point[]): boolean {
  return hull.every((from, index) => {
    const to = hull[(index + 1) % hull.length] ?? from;
    return (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x) >= 0;
  });
}

function tagOf(
  chord: Chord,
  hulls: readonly (readonly Point[])[],
  source: KeySceneSource,
  { taken, glyphs }: Manner,
): ChordTag {
  const gives = shortened(legendOf(chord.action, source)) || 'blank';
  const window = String(chord.windowMs);
  const width = (textWidth(gives) + textWidth(window) * 0.8 + 1.1) * TAG_TEXT_MM;
  const box = placeTag(hulls, { width, height: TAG_HEIGHT_MM }, { tags: taken, glyphs });
  taken.push(box);
  return { ...box, gives, window };
}

function shortened(text: string): string {
  return text.length > TAG_CHARS ? `${text.slice(0, TAG_CHARS - 1)}…` : text;
}

/** The size of a tag's writing, mm. */
export const TAG_SIZE_MM = TAG_TEXT_MM;
