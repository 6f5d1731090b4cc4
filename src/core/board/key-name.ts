import type { Board, KeyId } from '../keymap/types.ts';
import { type Post, postsOf } from './posts.ts';

const THUMB_WORDS: Readonly<Record<number, readonly string[]>> = {
  1: [''],
  2: ['inner', 'outer'],
  3: ['inner', 'middle', 'outer'],
  4: ['inner', 'second', 'third', 'outer'],
};

const remembered = new WeakMap<Board, ReadonlyMap<KeyId, string>>();

/**
 * What a person calls a key: "right index home", "left ring top", "left inner thumb". Unique on a board: where
 * words would repeat, the id follows in brackets. An id that the board lacks is its own name.
 */
export function keyName(board: Board, keyId: KeyId): string {
  let names = remembered.get(board);
  if (names === undefined) {
    names = namesOf(board);
    remembered.set(board, names);
  }
  return names.get(keyId) ?? keyId;
}

function namesOf(board: Board): ReadonlyMap<KeyId, string> {
  const plain = new Map([...postsOf(board)].map(([id, post]) => [id, wordsOf(post)]));
  const counts = new Map<string, number>();
  for (const words of plain.values()) counts.set(words, (counts.get(words) ?? 0) + 1);
  return new Map([...plain].map(([id, words]) => [id, counts.get(words) === 1 ? words : `${words} (${id})`]));
}

function wordsOf(post: Post): string {
  const { hand, finger, home } = post.key;
  if (finger === 'thumb') return joined(hand, thumbWord(post), 'thumb');
  return joined(hand, columnWord(post.column), finger, home ? 'home' : rowWord(post.row, post.column));
}

function joined(...words: readonly string[]): string {
  return words.filter((word) => word !== '').join(' ');
}

function thumbWord({ column, columns }: Post): string {
  return THUMB_WORDS[columns]?.[column] ?? `${column + 1}.`;
}

function columnWord(column: number): string {
  if (column === 0) return '';
  const side = column < 0 ? 'inner' : 'outer';
  return Math.abs(column) === 1 ? side : `${'far '.repeat(Math.abs(column) - 1)}${side}`;
}

function rowWord(row: number, column: number): string {
  if (row === 0) return column === 0 ? 'home' : 'middle';
  return `${'far '.repeat(Math.abs(row) - 1)}${row < 0 ? 'top' : 'bottom'}`;
}
