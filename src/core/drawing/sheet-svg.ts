import { MM_OF_POINT, setText } from './set-text.ts';
import { type BoxMark, type Ink, type Mark, type PathMark, rounded, type TextMark } from './sheet-marks.ts';
import type { InkChoice, PaperSize } from './sheet-paper.ts';
import type { FaceName, SheetType } from './sheet-type.ts';

/** Okabe and Ito's colour-blind-safe set, in the order of the ladder's rungs, as on the screen. */
const LAYER_COLOURS = ['#e69f00', '#56b4e9', '#009e73', '#f0e442', '#0072b2', '#d55e00', '#cc79a7'];
const COLOURS = { ink: '#1e2226', muted: '#5c6167', hairline: '#a39b8b', paper: '#ffffff', chord: '#1f5f5b' };
const BLACK = { ink: '#000000', muted: '#000000', hairline: '#000000', paper: '#ffffff', chord: '#000000' };

/** The colour of an ink. In black everything but the paper is black: layers are told apart by their rung and number. */
export function inkColour(ink: Ink, choice: InkChoice): string {
  const named = choice === 'colour' ? COLOURS : BLACK;
  if (ink in named) return named[ink as keyof typeof named];
  const number = Number(ink.slice('layer-'.length));
  return choice === 'black' ? BLACK.ink : (LAYER_COLOURS[number % LAYER_COLOURS.length] ?? COLOURS.ink);
}

/** A page as a self-contained SVG: letters are outlines, defined once each, and nothing is loaded from anywhere. */
export function pageSvg(
  marks: readonly Mark[],
  size: PaperSize,
  words: { readonly title: string; readonly description: string },
  type: SheetType,
  choice: InkChoice,
): string {
  const letters = new Letters(type);
  const drawn = marks.map((mark) => drawnMark(mark, choice, letters)).join('\n');
  const { width, height } = { width: rounded(size.width), height: rounded(size.height) };
  return [
    `<svg xmlns="http://www.w3.org/2000/svg" width="${width}mm" height="${height}mm" viewBox="0 0 ${width} ${height}" role="img">`,
    `<title>${escaped(words.title)}</title>`,
    `<desc>${escaped(words.description)}</desc>`,
    `<rect width="${width}" height="${height}" fill="${inkColour('paper', choice)}"/>`,
    `<defs>${letters.definitions()}</defs>`,
    drawn,
    '</svg>\n',
  ].join('\n');
}

/** The outlines that a page uses, each under a short name. */
class Letters {
  readonly #type: SheetType;
  readonly #names = new Map<string, { readonly name: string; readonly path: string }>();

  constructor(type: SheetType) {
    this.#type = type;
  }

  /** One line as references to outlines, in thousandths of the size. */
  line(face: FaceName, text: string): string {
    const { signs } = setText(this.#type, face, text);
    return signs
      .map(({ path, x }) => `<use href="#${this.#nameOf(path)}"${x === 0 ? '' : ` x="${x}"`}/>`)
      .join('');
  }

  definitions(): string {
    return [...this.#names.values()].map(({ name, path }) => `<path id="${name}" d="${path}"/>`).join('');
  }

  #nameOf(path: string): string {
    const known = this.#names.get(path);
    if (known !== undefined) return known.name;
    const name = `l${this.#names.size}`;
    this.#names.set(path, { name, path });
    return name;
  }
}

function drawnMark(mark: Mark, choice: InkChoice, letters: Letters): string {
  switch (mark.mark) {
    case 'text':
      return drawnText(mark, choice, letters);
    case 'box':
      return drawnBox(mark, choice);
    case 'path':
      return drawnPath(mark, choice);
  }
}

function drawnText(mark: TextMark, choice: InkChoice, letters: Letters): string {
  const scale = Math.round(((mark.sizePt * MM_OF_POINT) / 1000) * 1e6) / 1e6;
  const place = `translate(${rounded(mark.x)} ${rounded(mark.y)})${turnOf(mark.turn)} scale(${scale})`;
  return `<g transform="${place}" fill="${inkColour(mark.ink, choice)}">${letters.line(mark.face, mark.text)}</g>`;
}

function turnOf(degrees: number): string {
  return degrees === 0 ? '' : ` rotate(${rounded(degrees)})`;
}

/** In black what leads to a layer is underlined no thicker than this. */
const BLACK_LINE_MM = 0.28;

/**
 * In black a layer's bar is hollow: that takes less ink, and a filled one would be read as the character "|" before its
 * legend.
 */
function inBlack(mark: BoxMark): BoxMark {
  const { fill, ...hollow } = mark;
  if (fill?.startsWith('layer-') !== true) return mark;
  if (mark.width > mark.height) return { ...mark, height: Math.min(mark.height, BLACK_LINE_MM) };
  return { ...hollow, stroke: 'ink', strokeMm: 0.12 };
}

function drawnBox(drawn: BoxMark, choice: InkChoice): string {
  const mark = choice === 'black' ? inBlack(drawn) : drawn;
  const { radius, width, height } = mark;
  const at = `x="${rounded(mark.x - width / 2)}" y="${rounded(mark.y - height / 2)}" width="${rounded(width)}" height="${rounded(height)}"`;
  const turned =
    mark.rotation === 0
      ? ''
      : ` transform="rotate(${rounded(mark.rotation)} ${rounded(mark.x)} ${rounded(mark.y)})"`;
  const round = radius === 0 ? '' : ` rx="${rounded(radius)}"`;
  const fill = mark.fill === undefined ? 'none' : inkColour(mark.fill, choice);
  const stroke =
    mark.stroke === undefined
      ? ''
      : ` stroke="${inkColour(mark.stroke, choice)}" stroke-width="${strokeMm(mark.stroke, mark.strokeMm ?? 0.2, choice)}"`;
  return `<rect ${at}${round} fill="${fill}"${stroke}${turned}/>`;
}

/** A hairline in black would be as loud as what it frames, so it is drawn finer. */
function strokeMm(ink: Ink, mm: number, choice: InkChoice): string {
  return rounded(choice === 'black' && ink === 'hairline' ? mm * 0.6 : mm);
}

function drawnPath(mark: PathMark, choice: InkChoice): string {
  const stroke = `stroke="${inkColour(mark.stroke, choice)}" stroke-width="${strokeMm(mark.stroke, mark.strokeMm, choice)}"`;
  return `<path d="${mark.path}" fill="none" ${stroke} stroke-linejoin="round"/>`;
}

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** Text from a file is never markup, and XML has no place for control characters. */
function escaped(text: string): string {
  return text
    .replace(/[&<>"]/g, (sign) => ENTITIES[sign] ?? '')
    .replace(/[\p{Cc}\ufffe\uffff]|\p{Cs}/gu, ' ');
}
