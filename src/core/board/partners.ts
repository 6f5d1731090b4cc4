import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import { type Post, postsOf } from './posts.ts';

/**
 * Which key of the other hand each key is the mirror image of: the one of the same finger in the same column and row,
 * counted from the home key. Keys without one are not in it.
 */
export function partnersOf(board: Board): ReadonlyMap<KeyId, KeyId> {
  const posts = [...postsOf(board).values()];
  const byPlace = new Map(posts.map((post) => [placeOf(post, post.key.hand), post.key.id]));
  return new Map(
    posts.flatMap((post): [KeyId, KeyId][] => {
      const partner = byPlace.get(placeOf(post, post.key.hand === 'left' ? 'right' : 'left'));
      return partner === undefined ? [] : [[post.key.id, partner]];
    }),
  );
}

function placeOf({ key, column, row }: Post, hand: BoardKey['hand']): string {
  return `${hand} ${key.finger} ${column} ${row}`;
}

/** The x half way between keys and their partners on average, mm; half way between the caps where there are none. */
export function mirrorAxis(board: Board): number {
  const places = new Map(board.keys.map((key) => [key.id, key]));
  const middles = [...partnersOf(board)].flatMap(([one, other]) => {
    const [a, b] = [places.get(one), places.get(other)];
    return a === undefined || b === undefined ? [] : [(a.x + b.x) / 2];
  });
  const xs = middles.length > 0 ? middles : board.keys.map(({ x }) => x);
  return xs.reduce((sum, x) => sum + x, 0) / xs.length;
}

/** Halves that are further from each other's mirror image than this, mm or degrees, are not alike. */
const ALIKE = 0.5;

/** Whether every key has a partner, and lies where that one's mirror image would. */
export function isMirrored(board: Board): boolean {
  const partners = partnersOf(board);
  const axis = mirrorAxis(board);
  const places = new Map(board.keys.map((key) => [key.id, key]));
  return board.keys.every((key) => {
    const partner = places.get(partners.get(key.id) ?? '');
    if (partner === undefined) return false;
    const apart = [
      key.x + partner.x - 2 * axis,
      key.y - partner.y,
      key.rotation + partner.rotation,
      key.width - partner.width,
      key.height - partner.height,
    ];
    return apart.every((by) => Math.abs(by) <= ALIKE);
  });
}
