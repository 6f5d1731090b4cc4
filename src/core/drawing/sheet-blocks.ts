import { MM_OF_POINT, textMm, wrapped } from './set-text.ts';
import type { Block } from './sheet-flow.ts';
import { LEADING, linesMm, type Mark, type TextLook, textAt } from './sheet-marks.ts';
import type { SheetType } from './sheet-type.ts';

/** How the sections under the boards are set. */
export interface Setting {
  readonly type: SheetType;
  /** Width of a column, mm. */
  readonly width: number;
}

export const TABLE_LOOK: TextLook = { face: 'sans', sizePt: 8, ink: 'ink' };
export const ASIDE_LOOK: TextLook = { face: 'italic', sizePt: 8, ink: 'ink' };
export const HEAD_LOOK: TextLook = { face: 'serif', sizePt: 10.5, ink: 'ink' };
export const SMALL_LOOK: TextLook = { face: 'italic', sizePt: 7.5, ink: 'muted' };

/** From the top of a line to its baseline, mm. */
export function ascentMm(sizePt: number): number {
  return sizePt * MM_OF_POINT * (LEADING * 0.78);
}

/** Lines of text from `x`, the top of the first at `y`. */
export function linesAt(lines: readonly string[], x: number, y: number, look: TextLook): readonly Mark[] {
  const step = linesMm(1, look.sizePt);
  return lines.map((line, at) => textAt(line, x, y + ascentMm(look.sizePt) + at * step, look));
}

/** A line that ends at `right`. */
export function rightAt(
  type: SheetType,
  text: string,
  right: number,
  y: number,
  look: TextLook,
): readonly Mark[] {
  return linesAt([text], right - textMm(type, look.face, look.sizePt, text), y, look);
}

/** Between sections, mm. */
const ABOVE_HEAD_MM = 5;

/** The heading of a section. */
export function headBlock(text: string, { type, width }: Setting): Block {
  const lines = wrapped(type, HEAD_LOOK.face, HEAD_LOOK.sizePt, text, width);
  return {
    height: linesMm(lines.length, HEAD_LOOK.sizePt) + 1.2,
    keepsWithNext: true,
    above: ABOVE_HEAD_MM,
    draw: (x, y) => linesAt(lines, x, y, HEAD_LOOK),
  };
}

/** A paragraph after a sign that hangs in the margin; each of its lines is a block, so that it can break anywhere. */
export function hangingBlocks(
  sign: string,
  text: string,
  indentMm: number,
  { type, width }: Setting,
  looks: { readonly sign: TextLook; readonly text: TextLook },
): readonly Block[] {
  const lines = wrapped(type, looks.text.face, looks.text.sizePt, text, width - indentMm);
  return lines.map((line, at) => ({
    height: linesMm(1, looks.text.sizePt),
    above: at === 0 ? 0.7 : 0,
    keepsWithNext: at === 0 && lines.length > 1,
    draw: (x, y) => [
      ...(at === 0 ? linesAt([sign], x, y, looks.sign) : []),
      ...linesAt([line], x + indentMm, y, looks.text),
    ],
  }));
}
