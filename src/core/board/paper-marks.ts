import type { Board, BoardKey } from '../keymap/types.ts';
import type { BoardPage } from './board-pages.ts';
import { boardTitle } from './board-title.ts';
import { boardExtent, capCorners } from './caps.ts';

/** An element of SVG as plain data: drawn on the page by React, written into a file as text. Lengths are mm. */
export interface PaperMark {
  readonly tag: 'path' | 'text' | 'g';
  readonly attributes: Readonly<Record<string, string | number>>;
  readonly text?: string;
  readonly marks?: readonly PaperMark[];
}

/** How long the line is by which a printed page is checked, mm. */
export const RULE_MM = 100;

const INK = '#000';
const GREY = '#666';
const FONT = { 'font-family': 'system-ui, sans-serif', fill: INK };

/** All that stands on a page: caps at their true size, whose finger each is, the seams, and the rule to check it by. */
export function pageMarks(board: Board, page: BoardPage): readonly PaperMark[] {
  return [
    heading(board, page),
    ...seams(page),
    ...page.keys.filter((key) => isOn(key, page)).map((key) => cap(key, page)),
    rule(page),
  ];
}

/** Whether any of a cap is on the page; caps that run over its edge stand on the neighbouring page too. */
function isOn(key: BoardKey, { offset, widthMm, heightMm }: BoardPage): boolean {
  const { minX, minY, maxX, maxY } = boardExtent({ name: '', keys: [key] });
  return (
    maxX + offset.x > 0 && minX + offset.x < widthMm && maxY + offset.y > 0 && minY + offset.y < heightMm
  );
}

function cap(key: BoardKey, { offset }: BoardPage): PaperMark {
  const outline = capCorners({ ...key, x: 0, y: 0, rotation: 0 })
    .map(({ x, y }) => `${rounded(x)} ${rounded(y)}`)
    .join('L');
  const whose = key.finger === 'thumb' ? 'thumb' : `${key.finger}`;
  return {
    tag: 'g',
    attributes: {
      transform: `translate(${rounded(key.x + offset.x)} ${rounded(key.y + offset.y)}) rotate(${rounded(key.rotation)})`,
    },
    marks: [
      {
        tag: 'path',
        attributes: {
          d: `M${outline}Z`,
          fill: key.home ? '#f1f1f1' : 'none',
          stroke: INK,
          'stroke-width': 0.25,
          'stroke-linejoin': 'round',
        },
      },
      { tag: 'path', attributes: { d: 'M-1.2 0H1.2M0 -1.2V1.2', stroke: GREY, 'stroke-width': 0.15 } },
      {
        tag: 'text',
        attributes: { ...FONT, y: -key.height / 2 + 4.2, 'font-size': 2.6, 'text-anchor': 'middle' },
        text: whose,
      },
      {
        tag: 'text',
        attributes: {
          ...FONT,
          fill: GREY,
          y: key.height / 2 - 2.4,
          'font-size': 2.2,
          'text-anchor': 'middle',
        },
        text: key.home ? `home · ${key.id}` : key.id,
      },
    ],
  };
}

function heading(board: Board, { part, offset, widthMm }: BoardPage): PaperMark {
  const title = board.name === boardTitle(board) ? board.name : `${board.name} (${boardTitle(board)})`;
  const middle = offset.x;
  const inside = middle > 12 && middle < widthMm - 12;
  return {
    tag: 'g',
    attributes: {},
    marks: [
      {
        tag: 'text',
        attributes: { ...FONT, x: 10, y: 15, 'font-size': 4.2, 'font-weight': 600 },
        text: part === null ? title : `${part} – ${title}`,
      },
      {
        tag: 'text',
        attributes: { ...FONT, fill: GREY, x: 10, y: 20.4, 'font-size': 3 },
        text: 'True size, in millimetres. Rest the fingers on the grey caps, then reach for the others without moving the hand.',
      },
      // The middle of the board, where the halves of two pages belong on either side of.
      ...(inside
        ? [
            {
              tag: 'path',
              attributes: { d: `M${rounded(middle)} 22v3`, stroke: GREY, 'stroke-width': 0.2 },
            } as const,
          ]
        : []),
    ],
  };
}

function seams({ seams: lines, offset, widthMm, heightMm }: BoardPage): readonly PaperMark[] {
  return lines.map(({ across, at }) => ({
    tag: 'path',
    attributes: {
      d: across
        ? `M6 ${rounded(at + offset.y)}H${widthMm - 6}`
        : `M${rounded(at + offset.x)} 24V${heightMm - 28}`,
      fill: 'none',
      stroke: GREY,
      'stroke-width': 0.2,
      'stroke-dasharray': '2 1.5',
    },
  }));
}

/** A line of exactly 100 mm with a tick at every centimetre. */
function rule({ heightMm, seams: lines }: BoardPage): PaperMark {
  const ticks = Array.from({ length: RULE_MM / 10 + 1 }, (_, index) => {
    const tall = index % 5 === 0 ? 4 : 2.5;
    return `M${index * 10} 0v${-tall}`;
  }).join('');
  const more = lines.length > 0 ? ' Lay the dashed lines of neighbouring pages on each other.' : '';
  return {
    tag: 'g',
    attributes: { transform: `translate(10 ${heightMm - 18})` },
    marks: [
      { tag: 'path', attributes: { d: ticks, fill: 'none', stroke: INK, 'stroke-width': 0.2 } },
      {
        tag: 'path',
        attributes: {
          'data-rule': 'length',
          d: `M0 0H${RULE_MM}`,
          fill: 'none',
          stroke: INK,
          'stroke-width': 0.3,
        },
      },
      ...[0, 50, 100].map(
        (at): PaperMark => ({
          tag: 'text',
          attributes: { ...FONT, x: at, y: -5, 'font-size': 2.8, 'text-anchor': 'middle' },
          text: at === 100 ? '100 mm' : String(at),
        }),
      ),
      {
        tag: 'text',
        attributes: { ...FONT, y: 5, 'font-size': 3 },
        text: `This line is ${RULE_MM} mm long. If a ruler says otherwise, print again at 100 %, not fitted to the page.${more}`,
      },
    ],
  };
}

/** Thousandths of a mm: far finer than any printer. */
function rounded(value: number): number {
  return Math.round(value * 1000) / 1000 + 0;
}

/** A page as a file of SVG whose size is given in mm, so that any program shows and prints it at its true size. */
export function pageSvg(board: Board, page: BoardPage): string {
  const { widthMm, heightMm } = page;
  const marks = pageMarks(board, page).map(written).join('\n');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${widthMm}mm" height="${heightMm}mm" viewBox="0 0 ${widthMm} ${heightMm}">\n${marks}\n</svg>\n`;
}

function written({ tag, attributes, text, marks }: PaperMark): string {
  const fields = Object.entries(attributes).map(([name, value]) => ` ${name}="${escaped(String(value))}"`);
  const inside = `${text === undefined ? '' : escaped(text)}${(marks ?? []).map(written).join('')}`;
  return `<${tag}${fields.join('')}>${inside}</${tag}>`;
}

/** Names come from people and files: a sign that SVG reads is written as what it stands for. */
function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}
