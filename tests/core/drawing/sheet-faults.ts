import { capCorners, overlapMm } from '../../../src/core/board/caps.ts';
import { plus, turned } from '../../../src/core/board/point.ts';
import { MM_OF_POINT, setText } from '../../../src/core/drawing/set-text.ts';
import type { SheetPage } from '../../../src/core/drawing/sheet.ts';
import { type Box, LEAST_PT, type TextMark } from '../../../src/core/drawing/sheet-marks.ts';
import type { SheetType } from '../../../src/core/drawing/sheet-type.ts';

/** Rounding and curves whose control points lie just outside them, mm. */
const TOLERANCE_MM = 0.03;

/** The rectangle that the outline of one sign fills, thousandths of the size; null for a space. */
function inkOf(path: string): { x0: number; y0: number; x1: number; y1: number } | null {
  let at = { x: 0, y: 0 };
  let start = at;
  const xs: number[] = [];
  const ys: number[] = [];
  for (const [, step = '', rest = ''] of path.matchAll(/([mlqz])([^mlqz]*)/g)) {
    const numbers = [...rest.matchAll(/-?\d+/g)].map(([text]) => Number(text));
    const from = at;
    for (let index = 0; index + 1 < numbers.length; index += 2) {
      at = { x: from.x + (numbers[index] ?? 0), y: from.y + (numbers[index + 1] ?? 0) };
      xs.push(at.x);
      ys.push(at.y);
    }
    if (step === 'm') start = at;
    if (step === 'z') at = start;
  }
  if (xs.length === 0) return null;
  return { x0: Math.min(...xs), y0: Math.min(...ys), x1: Math.max(...xs), y1: Math.max(...ys) };
}

/** The turned rectangle that the ink of a text fills, worked out from the outlines themselves, mm. */
function inkBox(type: SheetType, mark: TextMark): Box | null {
  const signs = setText(type, mark.face, mark.text).signs.flatMap(({ path, x }) => {
    const ink = inkOf(path);
    return ink === null ? [] : [{ ...ink, x0: ink.x0 + x, x1: ink.x1 + x }];
  });
  if (signs.length === 0) return null;
  const scale = (mark.sizePt * MM_OF_POINT) / 1000;
  const x0 = Math.min(...signs.map((ink) => ink.x0)) * scale;
  const x1 = Math.max(...signs.map((ink) => ink.x1)) * scale;
  const y0 = Math.min(...signs.map((ink) => ink.y0)) * scale;
  const y1 = Math.max(...signs.map((ink) => ink.y1)) * scale;
  const middle = plus(turned({ x: (x0 + x1) / 2, y: (y0 + y1) / 2 }, mark.turn), mark);
  return { ...middle, width: x1 - x0, height: y1 - y0, rotation: mark.turn };
}

function leaves(box: Box, within: Box): boolean {
  return capCorners(box).some((corner) => {
    const seen = turned({ x: corner.x - within.x, y: corner.y - within.y }, -within.rotation);
    return (
      Math.abs(seen.x) > within.width / 2 + TOLERANCE_MM ||
      Math.abs(seen.y) > within.height / 2 + TOLERANCE_MM
    );
  });
}

/** Cheap first look: boxes whose surrounding circles are apart cannot overlap. */
function isNear(one: Box, other: Box): boolean {
  const reach = Math.hypot(one.width, one.height) / 2 + Math.hypot(other.width, other.height) / 2;
  return Math.hypot(one.x - other.x, one.y - other.y) < reach;
}

/** Everything that a sheet may not do, in words: text too small, off its page or key, or over another text. */
export function sheetFaults({ marks, width, height }: SheetPage, type: SheetType): readonly string[] {
  const page: Box = { x: width / 2, y: height / 2, width, height, rotation: 0 };
  const texts = marks.flatMap((mark) => {
    const box = mark.mark === 'text' ? inkBox(type, mark) : null;
    return mark.mark === 'text' && box !== null ? [{ mark, box }] : [];
  });
  const alone = texts.flatMap(({ mark, box }) => [
    ...(mark.sizePt < LEAST_PT - 1e-9 ? [`${mark.text} is ${mark.sizePt} pt`] : []),
    ...(leaves(box, page) ? [`${mark.text} leaves the page`] : []),
    ...(mark.within !== undefined && leaves(box, mark.within) ? [`${mark.text} leaves its key`] : []),
  ]);
  const pairs = texts.flatMap((one, at) =>
    texts
      .slice(at + 1)
      .filter((other) => isNear(one.box, other.box) && overlapMm(one.box, other.box) > TOLERANCE_MM)
      .map((other) => [one, other] as const),
  );
  return [...alone, ...pairs.map(([one, other]) => `${one.mark.text} lies over ${other.mark.text}`)];
}
