import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import { postsOf } from './posts.ts';

/**
 * The keys in rows from the top, each from left to right over both hands, thumb keys as the last row: the order in
 * which rows of characters are pasted and the board is read out.
 */
export function boardRows(board: Board): readonly (readonly KeyId[])[] {
  const rows = new Map<number, BoardKey[]>();
  for (const { key, row } of postsOf(board).values()) {
    const number = key.finger === 'thumb' ? Number.POSITIVE_INFINITY : row;
    rows.set(number, [...(rows.get(number) ?? []), key]);
  }
  return [...rows]
    .sort(([one], [other]) => (one === other ? 0 : one - other))
    .map(([, keys]) => keys.sort(leftToRight).map((key) => key.id));
}

/** Keys right above one another, which a row only has on odd boards, go by y and then by id. */
function leftToRight(one: BoardKey, other: BoardKey): number {
  return one.x - other.x || one.y - other.y || (one.id < other.id ? -1 : 1);
}
