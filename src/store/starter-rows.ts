import { boardRows } from '../core/board/rows.ts';
import type { Board, BoardKey, KeyId } from '../core/keymap/types.ts';

/** The rows of a board that are not the thumbs', from the top. */
export function mainRows(board: Board): readonly (readonly BoardKey[])[] {
  return boardRows(board)
    .map((ids) => ids.flatMap((id) => board.keys.find((each) => each.id === id) ?? []))
    .filter((row) => row.some((each) => each.finger !== 'thumb'));
}

/** From the middle of the board to its outer edge. */
export function outwards(keys: readonly BoardKey[]): readonly BoardKey[] {
  return keys.toSorted((one, other) => (one.hand === 'left' ? other.x - one.x : one.x - other.x));
}

/** The rows that have the five inner columns of both hands: those ten keys from left to right. */
export function innerRows(board: Board): readonly (readonly KeyId[])[] {
  return mainRows(board)
    .map((row) => [
      ...outwards(row.filter(({ hand }) => hand === 'left'))
        .slice(0, 5)
        .reverse(),
      ...outwards(row.filter(({ hand }) => hand === 'right')).slice(0, 5),
    ])
    .filter((row) => row.length === 10)
    .map((row) => row.map(({ id }) => id));
}
