import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import { minus, type Point } from './point.ts';

/** A direction as the typist sees the board. */
export type Direction = 'left' | 'right' | 'up' | 'down';

const WAYS: Readonly<Record<Direction, Point>> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  up: { x: 0, y: -1 },
  down: { x: 0, y: 1 },
};

/** How far aside a key may lie for each mm in the direction: staggered neighbours in a row are not "up". */
const ASIDE_PER_AHEAD = 2.5;
/** What a mm aside counts beside a mm ahead. */
const ASIDE_COSTS = 2;

/**
 * The nearest key in a direction, seen from the key's centre: ahead counts once, aside twice, and keys further
 * aside than 2.5 times ahead are none. Of equals the one first on the board; null at the edge.
 */
export function neighbourOf(board: Board, keyId: KeyId, direction: Direction): KeyId | null {
  const from = board.keys.find((key) => key.id === keyId);
  if (from === undefined) return null;
  let best: { readonly id: KeyId; readonly cost: number } | null = null;
  for (const key of board.keys) {
    const cost = costOf(from, key, WAYS[direction]);
    if (cost !== null && (best === null || cost < best.cost)) best = { id: key.id, cost };
  }
  return best === null ? null : best.id;
}

function costOf(from: BoardKey, to: BoardKey, way: Point): number | null {
  if (from === to) return null;
  const apart = minus(to, from);
  const ahead = apart.x * way.x + apart.y * way.y;
  const aside = Math.abs(apart.x * way.y - apart.y * way.x);
  if (ahead <= 0 || aside > ASIDE_PER_AHEAD * ahead) return null;
  return ahead + ASIDE_COSTS * aside;
}
