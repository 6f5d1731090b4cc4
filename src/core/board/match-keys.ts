import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import { postsOf } from './posts.ts';

/** Keys of either board that already have their counterpart. */
interface Settled {
  readonly before: ReadonlySet<KeyId>;
  readonly after: ReadonlySet<KeyId>;
}

const NOTHING: Settled = { before: new Set(), after: new Set() };

/**
 * Which key of another board stands for each key of this one. First by place: the same hand, finger, column and row,
 * counted from the finger's home key. Then, among what is left, by id, if hand and finger are the same. A place is
 * held by one key at most; were there two, the first on the board would have it. Keys without a counterpart are left out.
 */
export function matchKeys(before: Board, after: Board, settled = NOTHING): ReadonlyMap<KeyId, KeyId> {
  const became = new Map<KeyId, KeyId>();
  const taken = new Set(settled.after);
  const by = (nameBefore: (key: BoardKey) => string, nameAfter: (key: BoardKey) => string) => {
    const free = new Map<string, KeyId>();
    for (const key of after.keys.toReversed()) if (!taken.has(key.id)) free.set(nameAfter(key), key.id);
    for (const key of before.keys) {
      if (settled.before.has(key.id) || became.has(key.id)) continue;
      const found = free.get(nameBefore(key));
      if (found === undefined || taken.has(found)) continue;
      became.set(key.id, found);
      taken.add(found);
    }
  };
  by(placeOn(before), placeOn(after));
  by(idAndFinger, idAndFinger);
  return became;
}

/** A key's place on its board in a word. */
function placeOn(board: Board): (key: BoardKey) => string {
  const posts = postsOf(board);
  return (key) => {
    const post = posts.get(key.id);
    return `${key.hand} ${key.finger} ${post?.column} ${post?.row}`;
  };
}

function idAndFinger({ id, hand, finger }: BoardKey): string {
  return `${id} ${hand} ${finger}`;
}
