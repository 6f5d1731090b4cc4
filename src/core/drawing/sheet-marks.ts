import type { BoardKey } from '../keymap/types.ts';
import { MM_OF_POINT, textMm } from './set-text.ts';
import type { FaceName, SheetType } from './sheet-type.ts';

/** A turned rectangle by its middle and size, mm and degrees. */
export type Box = Pick<BoardKey, 'x' | 'y' | 'width' | 'height' | 'rotation'>;

/** What something is drawn in; which colour that is depends on the ink that was chosen. */
export type Ink = 'ink' | 'muted' | 'hairline' | 'paper' | 'chord' | `layer-${number}`;

/** A line of text: x and y are the left end of its baseline, turned about that point. */
export interface TextMark {
  readonly mark: 'text';
  readonly face: FaceName;
  readonly sizePt: number;
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly turn: number;
  readonly ink: Ink;
  /** The cap that the text must not leave; absent for text that stands on the page. */
  readonly within?: Box;
}

/** A rectangle with round corners, filled or stroked. */
export interface BoxMark extends Box {
  readonly mark: 'box';
  readonly radius: number;
  readonly fill?: Ink;
  readonly stroke?: Ink;
  readonly strokeMm?: number;
}

/** A line that is drawn along an SVG path. */
export interface PathMark {
  readonly mark: 'path';
  readonly path: string;
  readonly stroke: Ink;
  readonly strokeMm: number;
}

/** Anything on a sheet. Lengths in mm from the page's upper left corner. */
export type Mark = TextMark | BoxMark | PathMark;

/**
 * No text on a sheet is smaller, points. Copied down by a fifth it stands at 5.6 pt, and its small letters are still
 * nearly a millimetre high: 5 to 6 pt is where print that is to be read at all ends (common practice, no source).
 */
export const LEAST_PT = 7;

/** From line to line, in sizes. */
export const LEADING = 1.14;

/** How far letters reach over and under the baseline, in sizes, accents on capitals included. */
export const ASCENT = 0.86;
export const DESCENT = 0.24;

/** From the middle of a line of capitals down to their baseline, in sizes: half the sans face's capital height. */
const HALF_CAPITAL = 0.33;

/** Height of `lines` lines, mm. */
export function linesMm(lines: number, sizePt: number): number {
  return lines * sizePt * LEADING * MM_OF_POINT;
}

/** What a text is drawn with. */
export interface TextLook {
  readonly face: FaceName;
  readonly sizePt: number;
  readonly ink: Ink;
}

/** A text on its baseline from `x` on. */
export function textAt(text: string, x: number, y: number, look: TextLook): TextMark {
  return { mark: 'text', text, x, y, turn: 0, ...look };
}

/** Lines of text one below the other, the middle of all at `x`, `y`. */
export function centred(
  type: SheetType,
  lines: readonly string[],
  x: number,
  y: number,
  look: TextLook,
): readonly TextMark[] {
  const size = look.sizePt * MM_OF_POINT;
  return lines.map((line, at) => {
    const left = x - textMm(type, look.face, look.sizePt, line) / 2;
    const middle = y + (at - (lines.length - 1) / 2) * size * LEADING;
    return textAt(line, left, middle + size * HALF_CAPITAL, look);
  });
}

/** The baseline that puts capitals in the middle of a line at `y`, mm. */
export function baselineAt(y: number, sizePt: number): number {
  return y + sizePt * MM_OF_POINT * HALF_CAPITAL;
}

/** A straight line. */
export function lineMark(
  from: readonly [number, number],
  to: readonly [number, number],
  stroke: Ink,
  strokeMm: number,
): PathMark {
  return { mark: 'path', path: `M${numbers(from)}L${numbers(to)}`, stroke, strokeMm };
}

function numbers([x, y]: readonly [number, number]): string {
  return `${rounded(x)} ${rounded(y)}`;
}

/** A length as it is written: hundredths of a millimetre are finer than any printer. */
export function rounded(mm: number): string {
  return String(Math.round(mm * 100) / 100 + 0);
}
