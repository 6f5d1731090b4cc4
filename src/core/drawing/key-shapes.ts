import { MM_OF_POINT, textMm } from './set-text.ts';
import { type BoxMark, type Ink, LEADING, type TextMark } from './sheet-marks.ts';
import type { SheetType } from './sheet-type.ts';

/** What is drawn about the middle of a cap. */
export type KeyMark = TextMark | BoxMark;

/** A thin level line with its middle at `x`, `y`: the layer falls through; or what lies under it is held. */
export function tickMark(x: number, y: number, width: number, fill: Ink): BoxMark {
  return { mark: 'box', x, y, width, height: 0.16, rotation: 0, radius: 0, fill };
}

/** A dot: blank on purpose. */
export function dotMark(x: number, y: number, size: number): BoxMark {
  return { mark: 'box', x, y, width: size, height: size, rotation: 0, radius: size / 2, fill: 'ink' };
}

/** A stroke right under lines of text, as wide as the widest of them. */
export function underline(
  type: SheetType,
  { lines, sizePt }: { readonly lines: readonly string[]; readonly sizePt: number },
  x: number,
  y: number,
  { fill, height }: { readonly fill: Ink; readonly height: number },
): BoxMark {
  const width = Math.max(...lines.map((line) => textMm(type, 'sans', sizePt, line)));
  const size = sizePt * MM_OF_POINT;
  const foot = y + ((lines.length - 1) / 2) * size * LEADING + size * 0.48;
  return { mark: 'box', x, y: foot + height / 2, width, height, rotation: 0, radius: 0, fill };
}

/** The bar that fingers feel for on the keys they rest on. */
export function homeMark(cap: { readonly width: number; readonly height: number }): BoxMark {
  const width = Math.min(3.6, cap.width * 0.3);
  return {
    mark: 'box',
    x: 0,
    y: cap.height / 2 - 0.75,
    width,
    height: 0.35,
    rotation: 0,
    radius: 0.17,
    fill: 'muted',
  };
}

/** The cap itself, a thin outline. */
export function capMark(cap: { readonly width: number; readonly height: number }): BoxMark {
  const { width, height } = cap;
  const radius = Math.min(1.6, width / 2, height / 2);
  return { mark: 'box', x: 0, y: 0, rotation: 0, width, height, radius, stroke: 'hairline', strokeMm: 0.18 };
}
