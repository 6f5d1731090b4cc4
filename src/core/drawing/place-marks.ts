import { type Point, plus, turned } from '../board/point.ts';
import { MM_OF_POINT, textMm } from './set-text.ts';
import { ASCENT, type Box, DESCENT, type Mark, type TextMark } from './sheet-marks.ts';
import type { SheetType } from './sheet-type.ts';

/** Marks that were drawn about the middle of a cap, put where the cap lies; texts know the cap that holds them. */
export function onCap(
  marks: readonly (TextMark | Extract<Mark, { mark: 'box' }>)[],
  cap: Box,
): readonly Mark[] {
  return marks.map((mark) => {
    const middle = plus(turned(mark, cap.rotation), cap);
    if (mark.mark === 'text') return { ...mark, ...middle, turn: cap.rotation, within: cap };
    return { ...mark, ...middle, rotation: mark.rotation + cap.rotation };
  });
}

/** The turned rectangle that a text takes, from the tallest accent to the lowest tail. */
export function textBox(type: SheetType, mark: TextMark): Box {
  const size = mark.sizePt * MM_OF_POINT;
  const width = textMm(type, mark.face, mark.sizePt, mark.text);
  const height = (ASCENT + DESCENT) * size;
  const middle: Point = { x: width / 2, y: ((DESCENT - ASCENT) / 2) * size };
  return { ...plus(turned(middle, mark.turn), mark), width, height, rotation: mark.turn };
}
