import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import { distanceMm, minus, turned } from './point.ts';

/**
 * Where a key stands as its finger sees it, found by geometry alone, so that boards not made from parameters have
 * it as well.
 */
export interface Post {
  readonly key: BoardKey;
  /** Columns outwards from the finger's home column, inwards negative; for thumbs, caps outwards from the inner one. */
  readonly column: number;
  /** Rows towards the typist from the finger's home row, away negative; 0 for thumbs. */
  readonly row: number;
  /** How many columns, or thumb keys, this finger has. */
  readonly columns: number;
}

/** A key seen from its finger's home key: outwards and towards the typist, mm. */
interface Seen {
  readonly key: BoardKey;
  readonly outwards: number;
  readonly down: number;
}

const PITCH_OF_CAP = 1.06;

const remembered = new WeakMap<Board, ReadonlyMap<KeyId, Post>>();

/** The post of every key of a board; remembered for as long as the board lives. */
export function postsOf(board: Board): ReadonlyMap<KeyId, Post> {
  const known = remembered.get(board);
  if (known !== undefined) return known;
  const posts = new Map(
    fingersOf(board)
      .flatMap((keys) => postsOfFinger(keys))
      .map((post) => [post.key.id, post]),
  );
  remembered.set(board, posts);
  return posts;
}

/** The board's keys by hand and finger, each in the board's order. */
export function fingersOf(board: Board): readonly (readonly BoardKey[])[] {
  const fingers = new Map<string, BoardKey[]>();
  for (const key of board.keys) {
    const name = `${key.hand} ${key.finger}`;
    fingers.set(name, [...(fingers.get(name) ?? []), key]);
  }
  return [...fingers.values()];
}

function postsOfFinger(keys: readonly BoardKey[]): Post[] {
  const home = keys.find((key) => key.home) ?? mostCentral(keys);
  if (home === undefined) return [];
  const seen = keys.map((key) => seenFrom(home, key)).sort((one, other) => one.outwards - other.outwards);
  if (home.finger === 'thumb') {
    return seen.map(({ key }, column) => ({ key, column, row: 0, columns: seen.length }));
  }
  const columns = columnsOf(seen, home.width / 2);
  const homeColumn = columns.findIndex((column) => column.some(({ key }) => key === home));
  return columns.flatMap((column, index) => {
    const first = firstRow(column, home.height * PITCH_OF_CAP);
    return column.map(({ key }, row) => ({
      key,
      column: index - homeColumn,
      row: first + row,
      columns: columns.length,
    }));
  });
}

function seenFrom(home: BoardKey, key: BoardKey): Seen {
  const way = turned(minus(key, home), -home.rotation);
  return { key, outwards: key.hand === 'right' ? way.x : -way.x, down: way.y };
}

/** Keys that follow each other outwards by less than half a cap stand in one column; each column from its top. */
function columnsOf(seen: readonly Seen[], nearMm: number): Seen[][] {
  const columns: Seen[][] = [];
  let last = Number.NEGATIVE_INFINITY;
  for (const each of seen) {
    if (each.outwards - last > nearMm) columns.push([]);
    columns.at(-1)?.push(each);
    last = each.outwards;
  }
  return columns.map((column) => column.sort((one, other) => one.down - other.down));
}

/** The row of a column's top key, so that its keys on average lie nearest to their rows; a tie goes to the lower row. */
function firstRow(column: readonly Seen[], pitchMm: number): number {
  const offsets = column.map(({ down }, row) => down / pitchMm - row);
  return Math.round(offsets.reduce((sum, offset) => sum + offset, 0) / offsets.length) + 0;
}

/** The key with the least sum of distances to the others; the first of equals. */
function mostCentral(keys: readonly BoardKey[]): BoardKey | undefined {
  const sums = keys.map((key) => keys.reduce((sum, other) => sum + distanceMm(key, other), 0));
  return keys[sums.indexOf(Math.min(...sums))];
}
