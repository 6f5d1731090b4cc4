import { boardExtent } from '../board/caps.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { Board } from '../keymap/types.ts';
import { boardForSheet, middling } from './sheet-board.ts';
import type { KeyManner } from './sheet-key.ts';
import { LEAST_PT, linesMm } from './sheet-marks.ts';
import type { PaperSize } from './sheet-paper.ts';
import type { SheetSource } from './sheet-source.ts';

/** One drawing of the board on a sheet. */
export interface BoardPlan {
  readonly manner: KeyManner;
  /** Millimetres on paper for one of the board. */
  readonly scale: number;
}

/** All drawings of the board, in the order of the pages: so many of them on a page. */
export interface SheetPlan {
  /** The board with its halves moved together. */
  readonly board: Board;
  readonly boards: readonly BoardPlan[];
  readonly perPage: number;
}

/** Caps are not drawn wider than this, mm: larger ones would only take ink and paper. */
const MOST_CAP_MM = 21;
/** The part of a page's height that boards may take: the rest is for what explains them. */
const ONE_BOARD = 0.62;
const EACH_OF_TWO = 0.36;
/** Free inside a cap: with chords their numbers stand on the caps' edges and need more. */
const PAD_MM = 1;
const PAD_WITH_CHORDS_MM = 1.4;

/** Decides how large the board is drawn, and how many times so that every rung is large enough to read. */
export function sheetPlan(source: SheetSource, room: PaperSize): SheetPlan {
  const board = boardForSheet(source.keymap.board);
  const padMm = chordsOf(source.keymap).length > 0 ? PAD_WITH_CHORDS_MM : PAD_MM;
  const scaleOf = (part: number) => scaleFor(board, room, part);
  const rungsAt = (scale: number) => rungsThatFit(board, scale, padMm);
  const upper = source.rungs.length;
  const isTall = room.height > room.width;
  if (upper <= rungsAt(scaleOf(ONE_BOARD)))
    return planned(board, [source.rungs], scaleOf(ONE_BOARD), 1, padMm);
  const scale = scaleOf(isTall ? EACH_OF_TWO : ONE_BOARD);
  const boards = Math.ceil(upper / rungsAt(scale));
  return planned(board, shared(source.rungs, boards), scale, isTall ? 2 : 1, padMm);
}

function scaleFor(board: Board, room: PaperSize, part: number): number {
  const { minX, minY, maxX, maxY } = boardExtent(board);
  const cap = MOST_CAP_MM / middling(board.keys.map(({ width }) => width));
  return Math.min(room.width / (maxX - minX), (room.height * part) / (maxY - minY), cap);
}

/** One at least: a rung that finds no room goes into the notes. */
function rungsThatFit(board: Board, scale: number, padMm: number): number {
  const height = middling(board.keys.map((key) => key.height)) * scale - 2 * padMm;
  return Math.max(1, Math.floor(height / linesMm(1, LEAST_PT) + 1e-9));
}

/** Rungs in equal shares, the lower ones first; the first shares take one more where they do not come out even. */
function shared(rungs: readonly number[], shares: number): readonly (readonly number[])[] {
  return Array.from({ length: shares }, (_, at) =>
    rungs.slice(Math.ceil((rungs.length * at) / shares), Math.ceil((rungs.length * (at + 1)) / shares)),
  );
}

function planned(
  board: Board,
  shares: readonly (readonly number[])[],
  scale: number,
  perPage: number,
  padMm: number,
): SheetPlan {
  const boards = shares.map((rungs, at) => ({ scale, manner: { padMm, rungs, isFirst: at === 0 } }));
  return { board, boards, perPage };
}
