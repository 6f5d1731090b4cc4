/** A legend laid out for a space: its lines and their size, mm; together they never exceed the space. */
export interface FittedText {
  readonly lines: readonly string[];
  readonly size: number;
}

/** The space that a legend may take, mm. */
export interface TextSpace {
  readonly width: number;
  readonly height: number;
  /** The size of a legend that has room to spare. */
  readonly most: number;
  /** Below this a legend is cut short rather than made smaller. */
  readonly least: number;
}

/** From line to line and from cap to foot, in sizes. */
export const LINE = 1.08;

const NARROW = /[\sijltfrI.,:;'’|!()[\]-]/;
const WIDE = /[mwMWO@%&#^—…+=<>~]/;
/** Two letters in one sign, such as ǆ. */
const DOUBLE = /[\u01c4-\u01cc\u01f1-\u01f3]/;
const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

const PLAIN = /^[ -~]*$/;

/** The characters of a text as a person counts them. */
export function graphemes(text: string): readonly string[] {
  // Of plain ASCII each is one, and asking the segmenter takes many times longer.
  if (PLAIN.test(text)) return [...text];
  return [...segmenter.segment(text)].map(({ segment }) => segment);
}

/** With every edit the legends of all layers are measured anew, and hardly one of them is another. */
const known = new Map<string, number>();
const MOST_KNOWN = 4000;

/** How wide a text may get at size 1, on the broad side for the system fonts; held against a browser's measure. */
export function textWidth(text: string): number {
  const before = known.get(text);
  if (before !== undefined) return before;
  const width = graphemes(text).reduce((sum, char) => sum + charWidth(char), 0);
  if (known.size >= MOST_KNOWN) known.clear();
  known.set(text, width);
  return width;
}

function charWidth(char: string): number {
  // An accent sits on its letter and does not widen it.
  const letter = char.normalize('NFD').charAt(0);
  if (DOUBLE.test(char)) return 1.45;
  if (WIDE.test(letter)) return 1.02;
  if (NARROW.test(letter)) return 0.46;
  if (letter > '\u007e') return 1.1;
  return /[A-Z]/.test(letter) ? 0.8 : 0.66;
}

/**
 * The largest layout of a legend that fits: on one line, or broken at a space into two where that makes it larger;
 * what does not fit at the least size loses its end to an ellipsis.
 */
export function fitText(text: string, space: TextSpace): FittedText {
  const layouts = [[text], ...breaks(text)].map((lines) => ({ lines, size: sizeOf(lines, space) }));
  const best = layouts.reduce((one, other) => (other.size > one.size * 1.15 ? other : one));
  if (best.size >= space.least) return best;
  return { lines: [cutShort(text, space.width / space.least)], size: space.least };
}

function breaks(text: string): string[][] {
  const words = text.split(' ');
  return words
    .slice(1)
    .map((_, index) => [words.slice(0, index + 1).join(' '), words.slice(index + 1).join(' ')]);
}

function sizeOf(lines: readonly string[], space: TextSpace): number {
  const widest = Math.max(...lines.map(textWidth), 0.01);
  return Math.min(space.most, space.width / widest, space.height / (lines.length * LINE));
}

function cutShort(text: string, width: number): string {
  if (textWidth(text) <= width) return text;
  const kept: string[] = [];
  let left = width - textWidth('…');
  for (const char of graphemes(text)) {
    left -= charWidth(char);
    if (left < 0) break;
    kept.push(char);
  }
  return `${kept.join('').trimEnd()}…`;
}
