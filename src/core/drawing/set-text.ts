import { type FaceName, outlineOf, type SheetType } from './sheet-type.ts';

/** Millimetres to a point: the typographer's point of 1/72 inch (PostScript, CSS). */
export const MM_OF_POINT = 25.4 / 72;

/** A text with each sign in its place. Lengths in thousandths of the size. */
export interface SetText {
  readonly signs: readonly { readonly sign: string; readonly path: string; readonly x: number }[];
  readonly width: number;
}

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The characters of a text as a person counts them. */
export function charactersOf(text: string): readonly string[] {
  return [...segmenter.segment(text)].map(({ segment }) => segment);
}

/**
 * A text as this type can set it: a character that it lacks a sign for is written by its code points, `U+1F469`, so
 * that nothing is lost and nothing is drawn as a box. Line breaks and controls become spaces.
 */
export function settable(type: SheetType, face: FaceName, text: string): string {
  const clean = text.replace(/[\p{Cc}\s]+/gu, ' ');
  return charactersOf(clean)
    .map((char) => settableCharacter(type, face, char))
    .join('');
}

function settableCharacter(type: SheetType, face: FaceName, char: string): string {
  if ([...char].every((point) => outlineOf(type, face, point) !== undefined)) return char;
  return [...char].map(codePointText).join('+');
}

function codePointText(point: string): string {
  return `U+${(point.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`;
}

/** Sets a text on one line. A mark that combines stands over the sign before it: such marks have no width. */
export function setText(type: SheetType, face: FaceName, text: string): SetText {
  let width = 0;
  const signs = [];
  for (const sign of settable(type, face, text)) {
    const outline = outlineOf(type, face, sign);
    if (outline === undefined) continue;
    if (outline.path !== '') signs.push({ sign, path: outline.path, x: width });
    width += outline.advance;
  }
  return { signs, width };
}

const widths = new WeakMap<SheetType, Map<string, number>>();

/** How wide a text stands, mm. */
export function textMm(type: SheetType, face: FaceName, sizePt: number, text: string): number {
  let known = widths.get(type);
  if (known === undefined) {
    known = new Map();
    widths.set(type, known);
  }
  const name = `${face} ${text}`;
  let width = known.get(name);
  if (width === undefined) {
    width = setText(type, face, text).width;
    known.set(name, width);
  }
  return (width / 1000) * sizePt * MM_OF_POINT;
}

/** Breaks a text into lines no wider than `widthMm`: at spaces, and inside a word only where it is wider by itself. */
export function wrapped(
  type: SheetType,
  face: FaceName,
  sizePt: number,
  text: string,
  widthMm: number,
): readonly string[] {
  const fits = (line: string) => textMm(type, face, sizePt, line) <= widthMm;
  const lines: string[] = [];
  let line = '';
  for (const word of settable(type, face, text)
    .split(' ')
    .flatMap((each) => pieces(each, fits))) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line !== '' && !fits(longer)) {
      lines.push(line);
      line = word;
    } else line = longer;
  }
  return line === '' ? lines : [...lines, line];
}

function pieces(word: string, fits: (text: string) => boolean): readonly string[] {
  if (fits(word)) return [word];
  const parts: string[] = [];
  let part = '';
  for (const char of charactersOf(word)) {
    if (part !== '' && !fits(part + char)) {
      parts.push(part);
      part = char;
    } else part += char;
  }
  return part === '' ? parts : [...parts, part];
}
