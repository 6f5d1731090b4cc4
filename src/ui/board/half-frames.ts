import { boardExtent } from '../../core/board/caps.ts';
import type { Board, Hand } from '../../core/keymap/types.ts';
import type { Frame } from './board-scene.ts';

const AIR_MM = 4;

/** The part of a board that one hand types on, with a little air, mm; null where that hand has no key. */
export function halfFrame(board: Board, hand: Hand): Frame | null {
  const keys = board.keys.filter((key) => key.hand === hand);
  if (keys.length === 0) return null;
  const { minX, minY, maxX, maxY } = boardExtent({ ...board, keys });
  return {
    x: minX - AIR_MM,
    y: minY - AIR_MM,
    width: maxX - minX + 2 * AIR_MM,
    height: maxY - minY + 2 * AIR_MM,
  };
}

/** The hand that types all of these keys; null if they take both, or if there are none. */
export function handOf(board: Board, keys: readonly string[]): Hand | null {
  const hands = new Set(board.keys.filter(({ id }) => keys.includes(id)).map(({ hand }) => hand));
  const [only] = hands;
  return hands.size === 1 && only !== undefined ? only : null;
}
