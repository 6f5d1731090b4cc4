import type { Board, BoardKey } from '../keymap/types.ts';
import { boardExtent } from './caps.ts';

/** Halves whose caps come nearer to one another than this are one piece, mm: less than a cap fits between. */
const ONE_PIECE_MM = 12;

/** The name that a board has of itself: "40 keys, split", "36 keys, one piece", "12 keys, one hand". */
export function boardTitle(board: Pick<Board, 'keys'>): string {
  const count = board.keys.length === 1 ? 'One key' : `${board.keys.length} keys`;
  const left = board.keys.filter(({ hand }) => hand === 'left');
  const right = board.keys.filter(({ hand }) => hand === 'right');
  if (left.length === 0 || right.length === 0) return `${count}, one hand`;
  return `${count}, ${betweenMm(left, right) < ONE_PIECE_MM ? 'one piece' : 'split'}`;
}

/** From the left half's caps to the right one's, across, mm. */
function betweenMm(left: readonly BoardKey[], right: readonly BoardKey[]): number {
  return boardExtent({ name: '', keys: right }).minX - boardExtent({ name: '', keys: left }).maxX;
}
