import { bindingOn } from '../keymap/lookup.ts';
import type { Binding, BoardKey, Layer } from '../keymap/types.ts';
import { capMark, dotMark, homeMark, type KeyMark, tickMark } from './key-shapes.ts';
import { sideMarks, textMarks } from './key-side.ts';
import { NoteBook } from './sheet-notes.ts';
import { rungMarks } from './sheet-rung.ts';
import { holdWordings, type SheetSource, tapWording } from './sheet-source.ts';

/** How the keys of one board of a sheet are laid out; the same for all of them. */
export interface KeyManner {
  /** Left free along the cap's edges, mm. */
  readonly padMm: number;
  /** Layers whose rungs stand on this board, lowest first, by their place in the document. */
  readonly rungs: readonly number[];
  /** The first board carries the base layer in full, a further one only recalls it. */
  readonly isFirst: boolean;
}

/** Between what a tap types and the ladder, mm. */
const GUTTER_MM = 0.7;
const MOST_TAP_PT = 19;
const MOST_WORD_PT = 11;
/** Two legends on a key are each no larger than this. */
const MOST_SHIFTED_PT = 13;
const MOST_HOLD_PT = 8.5;
/** A further board recalls the base layer no larger than this. */
const RECALLED_PT = 10;
const TAP_OVER_HOLD = 0.58;
const HOLD = 0.38;

interface Size {
  readonly width: number;
  readonly height: number;
}

/** The part of a cap left of its ladder. */
interface Column extends Size {
  readonly x: number;
}

/** Parts of a cap's room that its ladder may take, the one that is wanted first. */
const LADDERS = [0.42, 0.36, 0.48, 0.54, 0.3, 0.6, 0.2, 0.68];

/**
 * All that stands on a cap of that size: what it types, what holding does, the ladder of its layers. The ladder is as
 * wide as leaves least to the notes; of equals the first width, so that most keys look alike.
 */
export function keyMarks(
  key: BoardKey,
  cap: Size,
  manner: KeyManner,
  source: SheetSource,
  notes: NoteBook,
): readonly KeyMark[] {
  const missing = (ladder: number) => {
    const tried = new NoteBook();
    const marks = laidOut(key, cap, ladder, manner, source, tried);
    // A legend that is only recalled goes into no notes, and is missed half as much.
    return tried.notes.length + (manner.isFirst || marks.some(({ mark }) => mark === 'text') ? 0 : 0.5);
  };
  const parts = manner.rungs.length > 0 ? LADDERS : [0];
  const judged = parts.map((ladder) => ({ ladder, notes: missing(ladder) }));
  const { ladder } = judged.reduce((one, other) => (other.notes < one.notes ? other : one));
  return laidOut(key, cap, ladder, manner, source, notes);
}

function laidOut(
  key: BoardKey,
  cap: Size,
  ladderPart: number,
  manner: KeyManner,
  source: SheetSource,
  notes: NoteBook,
): readonly KeyMark[] {
  const marks = [capMark(cap), ...(key.home ? [homeMark(cap)] : [])];
  const room = { width: cap.width - 2 * manner.padMm, height: cap.height - 2 * manner.padMm };
  const ladder = room.width * ladderPart;
  const width = room.width - ladder - (ladder > 0 ? GUTTER_MM : 0);
  const column = { x: (width - room.width) / 2, width, height: room.height };
  const left = manner.isFirst ? baseMarks(key, column, source, notes) : recalled(key, column, source);
  const space = { left: room.width / 2 - ladder, width: ladder, height: room.height };
  return [...marks, ...left, ...rungMarks(key, space, manner.rungs, source, notes)];
}

function baseMarks(key: BoardKey, column: Column, source: SheetSource, notes: NoteBook): readonly KeyMark[] {
  const [layer] = source.keymap.layers;
  const binding = layer && bindingOn(layer, key.id);
  if (layer === undefined || binding === undefined) return [tickMark(column.x, 0, 1.8, 'muted')];
  return [
    ...tapMarks(key, layer, binding, column, source, notes),
    ...holdMarks(key, layer, binding, column, source, notes),
  ];
}

type Drawn = readonly KeyMark[];

function tapMarks(
  key: BoardKey,
  layer: Layer,
  binding: Binding,
  column: Column,
  source: SheetSource,
  notes: NoteBook,
): Drawn {
  const { tap, onShift, hold } = binding;
  if (tap === undefined) return [];
  const height = column.height * (hold === undefined ? 1 : TAP_OVER_HOLD);
  const y = (height - column.height) / 2;
  if (tap.do === 'nothing' && onShift === undefined) return [dotMark(column.x, y, 0.9)];
  const plain = tapWording({ tap }, source);
  const mostPt = [...plain].length > 2 ? MOST_WORD_PT : MOST_TAP_PT;
  const space = { x: column.x, y, width: column.width, height, mostPt, mostLines: 3 };
  const what = { key: key.id, layer, side: 'tap', action: tap } as const;
  const wordings = [tapWording(binding, source)];
  if (onShift === undefined) return sideMarks({ ...what, wordings }, space, source, notes);
  const both = { ...space, mostPt: Math.min(mostPt, MOST_SHIFTED_PT) };
  const whole = textMarks(wordings, both, source, 'ink');
  if (whole !== null) return whole.marks;
  const part = textMarks([`${plain} ${notes.nextSign}`], both, source, 'ink');
  const marks = part?.marks ?? sideMarks({ ...what, wordings: [plain] }, space, source, notes);
  notes.add(key.id, layer, 'onShift', onShift, source);
  return marks;
}

function holdMarks(
  key: BoardKey,
  layer: Layer,
  { hold }: Binding,
  column: Column,
  source: SheetSource,
  notes: NoteBook,
): Drawn {
  if (hold === undefined) return [];
  const height = column.height * HOLD;
  const y = (column.height - height) / 2;
  const space = { x: column.x, y, width: column.width, height, mostPt: MOST_HOLD_PT, mostLines: 2 };
  const what = {
    key: key.id,
    layer,
    side: 'hold',
    action: hold,
    wordings: holdWordings(hold, source),
  } as const;
  return [
    tickMark(column.x, y - height / 2 - 0.2, column.width, 'muted'),
    ...sideMarks(what, space, source, notes),
  ];
}

/** On a further board the base layer stands small and pale, to find the key by. */
function recalled(key: BoardKey, column: Column, source: SheetSource): Drawn {
  const [layer] = source.keymap.layers;
  const tap = layer && bindingOn(layer, key.id)?.tap;
  if (tap === undefined || tap.do === 'nothing') return [];
  const space = { ...column, y: 0, mostPt: RECALLED_PT, mostLines: 2 };
  return textMarks([tapWording({ tap }, source)], space, source, 'muted')?.marks ?? [];
}
