import type { Board, BoardKey, Hand } from '../keymap/types.ts';
import { boardExtent, type Extent } from './caps.ts';
import type { Paper } from './paper.ts';

/** One page: its size as it lies, and the part of the board that stands on it. */
export interface BoardPage {
  readonly paper: Paper['id'];
  readonly lies: 'upright' | 'across';
  readonly widthMm: number;
  readonly heightMm: number;
  /** "Left half", "Page 2 of 4, right of the one before"; null where the whole board is on it. */
  readonly part: string | null;
  readonly keys: readonly BoardKey[];
  /** The page's place of the board's origin, mm: a point of the board lies there plus itself. */
  readonly offset: { readonly x: number; readonly y: number };
  /** Lines of the board on which this page and its neighbours are laid upon each other, mm on the board. */
  readonly seams: readonly { readonly across: boolean; readonly at: number }[];
}

/** What printers leave white, and the bands for the heading and the 100 mm rule, mm. Common practice, no source. */
const MARGIN = 10;
const HEAD = 14;
const FOOT = 20;
/** How much of the board two neighbouring pages share, mm. */
const SHARED = 20;

/** Room round the caps, so that their outlines are on the page, mm. */
const AIR = 1;

/** How the halves of a board are laid on paper: on one page if they fit, or each on its own. */
export type HalvesOnPaper = 'together' | 'apart';

/**
 * The pages on which a board stands at its true size. The whole board on one page if it fits, across or upright; else,
 * or on wish, a half on each; and a half that is too large for a page on as many as it takes, sharing 20 mm.
 */
export function boardPages(
  board: Board,
  paper: Paper,
  halves: HalvesOnPaper = 'together',
): readonly BoardPage[] {
  const whole = onOnePage(board.keys, paper, null);
  if (whole !== null && halves === 'together') return [whole];
  const parts = (['left', 'right'] as const).map((hand) => board.keys.filter((key) => key.hand === hand));
  if (parts.some((keys) => keys.length === 0))
    return whole === null ? tiles(board.keys, paper, null) : [whole];
  return parts.flatMap((keys, index) => {
    const part = halfWords(index === 0 ? 'left' : 'right');
    const page = onOnePage(keys, paper, part);
    return page === null ? tiles(keys, paper, part) : [page];
  });
}

function halfWords(hand: Hand): string {
  return hand === 'left' ? 'Left half' : 'Right half';
}

interface Sheet {
  readonly lies: BoardPage['lies'];
  readonly widthMm: number;
  readonly heightMm: number;
}

function sheetOf({ widthMm, heightMm }: Paper, lies: Sheet['lies']): Sheet {
  return lies === 'upright' ? { lies, widthMm, heightMm } : { lies, widthMm: heightMm, heightMm: widthMm };
}

/** The part of a page on which caps may stand, mm. */
function roomOn({ widthMm, heightMm }: Sheet): Extent {
  return { minX: MARGIN, minY: MARGIN + HEAD, maxX: widthMm - MARGIN, maxY: heightMm - MARGIN - FOOT };
}

function extentOf(keys: readonly BoardKey[]): Extent {
  const { minX, minY, maxX, maxY } = boardExtent({ name: '', keys });
  return { minX: minX - AIR, minY: minY - AIR, maxX: maxX + AIR, maxY: maxY + AIR };
}

const width = ({ minX, maxX }: Extent) => maxX - minX;
const height = ({ minY, maxY }: Extent) => maxY - minY;

function onOnePage(keys: readonly BoardKey[], paper: Paper, part: string | null): BoardPage | null {
  const needed = extentOf(keys);
  for (const lies of ['across', 'upright'] as const) {
    const sheet = sheetOf(paper, lies);
    const room = roomOn(sheet);
    if (width(needed) > width(room) || height(needed) > height(room)) continue;
    const offset = {
      x: (room.minX + room.maxX - needed.minX - needed.maxX) / 2,
      y: (room.minY + room.maxY - needed.minY - needed.maxY) / 2,
    };
    return { paper: paper.id, ...sheet, part, keys, offset, seams: [] };
  }
  return null;
}

/** Pages side by side and below each other, across, with a seam in the middle of what two of them share. */
function tiles(keys: readonly BoardKey[], paper: Paper, part: string | null): readonly BoardPage[] {
  const needed = extentOf(keys);
  const sheet = sheetOf(paper, 'across');
  const room = roomOn(sheet);
  const step = { x: width(room) - SHARED, y: height(room) - SHARED };
  const columns = Math.max(1, Math.ceil((width(needed) - SHARED) / step.x));
  const rows = Math.max(1, Math.ceil((height(needed) - SHARED) / step.y));
  const seams = [
    ...seamsOf(columns, needed.minX + SHARED / 2, step.x).map((at) => ({ across: false, at })),
    ...seamsOf(rows, needed.minY + SHARED / 2, step.y).map((at) => ({ across: true, at })),
  ];
  return Array.from({ length: columns * rows }, (_, index) => {
    const [column, row] = [index % columns, Math.floor(index / columns)];
    const start = { x: needed.minX + column * step.x, y: needed.minY + row * step.y };
    const offset = { x: room.minX - start.x, y: room.minY - start.y };
    const words = `page ${index + 1} of ${columns * rows}, row ${row + 1}, column ${column + 1}`;
    const shown = seams.filter(({ across, at }) => {
      const from = across ? start.y : start.x;
      return at >= from && at <= from + (across ? height(room) : width(room));
    });
    return {
      paper: paper.id,
      ...sheet,
      part: part === null ? words.replace('page', 'Page') : `${part}, ${words}`,
      keys,
      offset,
      seams: shown,
    };
  });
}

function seamsOf(count: number, first: number, step: number): readonly number[] {
  return Array.from({ length: count - 1 }, (_, index) => first + (index + 1) * step);
}
