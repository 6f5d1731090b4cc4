import { MM_OF_POINT, settable, textMm } from './set-text.ts';
import { LEADING, LEAST_PT } from './sheet-marks.ts';
import type { FaceName, SheetType } from './sheet-type.ts';

/** A text laid out for a space: its lines and their size. */
export interface FittedLines {
  readonly lines: readonly string[];
  readonly sizePt: number;
}

/** The space that a text may take, mm, and the most that its size may be, points. */
export interface LineSpace {
  readonly width: number;
  readonly height: number;
  readonly mostPt: number;
  readonly mostLines: number;
}

/** A second line must make the text so much larger to be worth it. */
const WORTH_BREAKING = 1.15;

/**
 * The first of several wordings that fits a space at a readable size, as large as it goes and broken at spaces where
 * that makes it larger; null where none fits.
 */
export function fitLines(
  type: SheetType,
  face: FaceName,
  wordings: readonly string[],
  space: LineSpace,
): FittedLines | null {
  for (const wording of wordings) {
    const layouts = breaks(settable(type, face, wording).trim(), space.mostLines).map((lines) => ({
      lines,
      sizePt: sizeOf(type, face, lines, space),
    }));
    const best = layouts.reduce((one, other) => (other.sizePt > one.sizePt * WORTH_BREAKING ? other : one));
    if (best.sizePt >= LEAST_PT) return best;
  }
  return null;
}

/** All ways to break a text at its spaces into at most so many lines, the fewest lines first. */
function breaks(text: string, mostLines: number): readonly (readonly string[])[] {
  const words = text.split(' ');
  const layouts: (readonly string[])[] = [[text]];
  for (let count = 2; count <= Math.min(mostLines, words.length); count += 1)
    layouts.push(...split(words, count));
  return layouts;
}

/** Long texts are not worth trying every way: they never fit a key. */
const MOST_WORDS = 8;

function split(words: readonly string[], count: number): readonly (readonly string[])[] {
  if (words.length > MOST_WORDS) return [];
  if (count === 1) return [[words.join(' ')]];
  return words.slice(0, words.length - count + 1).flatMap((_, at) => {
    const first = words.slice(0, at + 1).join(' ');
    return split(words.slice(at + 1), count - 1).map((rest) => [first, ...rest]);
  });
}

function sizeOf(type: SheetType, face: FaceName, lines: readonly string[], space: LineSpace): number {
  const widest = Math.max(...lines.map((line) => textMm(type, face, 1, line)), 1e-6);
  const byHeight = space.height / (lines.length * LEADING * MM_OF_POINT);
  return Math.min(space.mostPt, space.width / widest, byHeight);
}
