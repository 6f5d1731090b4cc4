import { legendOf } from '../host/legend.ts';
import { bindingOn } from '../keymap/lookup.ts';
import type { Binding, BoardKey, Layer } from '../keymap/types.ts';
import { dotMark, type KeyMark, tickMark, underline } from './key-shapes.ts';
import { MM_OF_POINT, settable, textMm } from './set-text.ts';
import { baselineAt, type Ink, LEADING, LEAST_PT, textAt } from './sheet-marks.ts';
import type { NoteBook } from './sheet-notes.ts';
import { type SheetSource, tapWording } from './sheet-source.ts';
import type { FaceName } from './sheet-type.ts';

/** The room that a cap has for its ladder, mm from its middle; the ladder stands in the middle of the height. */
export interface LadderSpace {
  readonly left: number;
  readonly width: number;
  readonly height: number;
}

const MOST_RUNG_MM = 4.6;
const MOST_RUNG_PT = 10;
const BAR_MM = 0.7;
/** From the ladder's left edge to its writing, mm. */
const INDENT_MM = 1.25;
/** Between a rung's tap and its hold, in sizes. */
const GAP = 0.32;
const TICK_MM = 1.3;

/** A piece of a rung's line. */
interface Piece {
  readonly text: string;
  readonly look: 'plain' | 'held' | 'sign';
}

/** The rungs of a ladder from the lowest at its foot; each layer at the same height on every key of that size. */
export function rungMarks(
  key: BoardKey,
  space: LadderSpace,
  rungs: readonly number[],
  source: SheetSource,
  notes: NoteBook,
): readonly KeyMark[] {
  const height = Math.min(MOST_RUNG_MM, space.height / rungs.length);
  return rungs.flatMap((number, at) => {
    const layer = source.keymap.layers[number];
    if (layer === undefined) return [];
    const y = height * (rungs.length / 2 - at - 0.5);
    const slot = { x: space.left + INDENT_MM, y, width: space.width - INDENT_MM, height };
    return rungOf({ key, layer, number, binding: bindingOn(layer, key.id) }, slot, source, notes);
  });
}

interface Slot {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

interface Rung {
  readonly key: BoardKey;
  readonly layer: Layer;
  readonly number: number;
  readonly binding: Binding | undefined;
}

function rungOf(rung: Rung, slot: Slot, source: SheetSource, notes: NoteBook): readonly KeyMark[] {
  const { binding, number } = rung;
  const ink = `layer-${number}` as const;
  if (binding === undefined) return tickIn(slot, ink);
  const bar: KeyMark = {
    mark: 'box',
    x: slot.x - INDENT_MM + BAR_MM / 2,
    y: slot.y,
    width: BAR_MM,
    height: slot.height * 0.82,
    rotation: 0,
    radius: 0,
    fill: ink,
  };
  if (binding.tap?.do === 'nothing' && binding.onShift === undefined && binding.hold === undefined)
    return [bar, dotMark(slot.x + 0.5, slot.y, 0.7)];
  return [bar, ...written(rung, binding, slot, source, notes)];
}

/** A tick, shorter on a ladder that has hardly any room. */
function tickIn({ x, y, width }: Slot, ink: Ink): readonly KeyMark[] {
  const long = Math.min(TICK_MM, width);
  return long <= 0 ? [] : [tickMark(x + long / 2, y, long, ink)];
}

/** Tap and hold side by side, the hold underlined; what has no room goes into the notes, the hold first. */
function written(
  { key, layer }: Rung,
  { tap, onShift, hold }: Binding,
  slot: Slot,
  source: SheetSource,
  notes: NoteBook,
): readonly KeyMark[] {
  const typed: readonly Piece[] =
    tap === undefined ? [] : [{ text: tapWording({ tap }, source), look: 'plain' }];
  const shifted: readonly Piece[] =
    onShift === undefined ? typed : [{ text: tapWording({ tap, onShift }, source), look: 'plain' }];
  const held: readonly Piece[] = hold === undefined ? [] : [{ text: legendOf(hold, source), look: 'held' }];
  const sign: Piece = { text: notes.nextSign, look: 'sign' };
  const whole = lineMarks([...shifted, ...held], slot, source);
  if (whole !== null) return whole;
  const isMore = onShift !== undefined || hold !== undefined;
  const part = tap !== undefined && isMore ? lineMarks([...typed, sign], slot, source) : null;
  if (tap !== undefined && part === null) notes.add(key.id, layer, 'tap', tap, source);
  if (onShift !== undefined) notes.add(key.id, layer, 'onShift', onShift, source);
  if (hold !== undefined) notes.add(key.id, layer, 'hold', hold, source);
  return part ?? lineMarks([sign], slot, source) ?? [];
}

const FACES: Readonly<Record<Piece['look'], FaceName>> = { plain: 'sans', held: 'sans', sign: 'italic' };

/** Pieces one after the other on one line; null where they are too wide or the slot too low. */
function lineMarks(pieces: readonly Piece[], slot: Slot, { type }: SheetSource): readonly KeyMark[] | null {
  const shown = pieces.map(({ text, look }) => ({ text: settable(type, FACES[look], text), look }));
  const widthOf = ({ text, look }: Piece, size: number) => textMm(type, FACES[look], size, text);
  const gaps = (pieces.length - 1) * GAP * MM_OF_POINT;
  const wide = shown.reduce((sum, piece) => sum + widthOf(piece, 1), gaps);
  const sizePt = Math.min(MOST_RUNG_PT, slot.width / wide, slot.height / (LEADING * MM_OF_POINT));
  if (sizePt < LEAST_PT) return null;
  let x = slot.x;
  return shown.flatMap((piece): readonly KeyMark[] => {
    const width = widthOf(piece, sizePt);
    const left = x;
    x += width + GAP * sizePt * MM_OF_POINT;
    const ink = piece.look === 'sign' ? 'muted' : 'ink';
    const text = textAt(piece.text, left, baselineAt(slot.y, sizePt), {
      face: FACES[piece.look],
      sizePt,
      ink,
    });
    if (piece.look !== 'held') return [text];
    const line = { fill: 'muted', height: 0.16 } as const;
    return [text, underline(type, { lines: [piece.text], sizePt }, left + width / 2, slot.y, line)];
  });
}
