import { boardRows } from '../board/rows.ts';
import type { Board, Hand, KeyId } from '../keymap/types.ts';
import type { GivenKeys } from './given-keys.ts';

/** Keys that stand, electrically, where other keys should. */
export type MovedKeys =
  | { readonly fault: 'swapped'; readonly keys: readonly [KeyId, KeyId] }
  /** Each key of a row gave the result of the one so many places to the right (left: negative). */
  | {
      readonly fault: 'row-shifted';
      readonly keys: readonly KeyId[];
      readonly hand: Hand;
      readonly by: number;
    }
  /** Each key of a half gave the result of the one at the same distance from the other end of its row. */
  | { readonly fault: 'half-mirrored'; readonly keys: readonly KeyId[]; readonly hand: Hand }
  | { readonly fault: 'gives-another'; readonly key: KeyId; readonly gives: KeyId };

/** So many keys must tell the same for a row to count as shifted. */
const LEAST_SHIFTED = 3;
/** So many for a half to count as mirrored: two pairs, as one pair is a swap. */
const LEAST_MIRRORED = 4;
/** And this share of those that a mirroring would move. */
const MOST_OF = 2 / 3;

/**
 * What keys that give one another's results have in common: mirrored halves first, then shifted rows; what is left over,
 * also within those, are swaps, and what is left then single keys.
 */
export function movedKeys(board: Board, given: GivenKeys): readonly MovedKeys[] {
  const rows = handRows(board);
  const left = new Map(given);
  const faults: MovedKeys[] = [];
  for (const hand of ['left', 'right'] as const) {
    const own = rows.filter((row) => row.hand === hand);
    const mirrored = mirroredHalf(hand, own, left);
    if (mirrored !== null) faults.push(mirrored);
  }
  for (const row of rows) faults.push(...shiftedRow(row, left));
  faults.push(...swaps(board, left));
  for (const [key, gives] of inOrder(board, left)) faults.push({ fault: 'gives-another', key, gives });
  return faults;
}

interface HandRow {
  readonly hand: Hand;
  readonly keys: readonly KeyId[];
}

/** The rows of each half without thumbs, left to right; thumb keys as a row of their own. */
function handRows(board: Board): readonly HandRow[] {
  const hands = new Map(board.keys.map(({ id, hand }) => [id, hand]));
  return boardRows(board).flatMap((row) =>
    (['left', 'right'] as const).map((hand) => ({
      hand,
      keys: row.filter((key) => hands.get(key) === hand),
    })),
  );
}

/** Takes a mirrored half out of what is to be explained, and leaves what the mirroring itself does not explain. */
function mirroredHalf(hand: Hand, rows: readonly HandRow[], left: Map<KeyId, KeyId>): MovedKeys | null {
  const mirror = new Map<KeyId, KeyId>();
  for (const { keys } of rows) {
    for (const [at, key] of keys.entries()) mirror.set(key, keys[keys.length - 1 - at] ?? key);
  }
  const moved = [...mirror].filter(([key, other]) => key !== other);
  const follow = moved.filter(([key, other]) => left.get(key) === other).map(([key]) => key);
  if (follow.length < LEAST_MIRRORED || follow.length < moved.length * MOST_OF) return null;
  // A swap within the half shows as a key that gives what its fellow's mirror is.
  for (const [key] of mirror) {
    const meant = mirror.get(left.get(key) ?? key) ?? key;
    if (left.has(key) && meant !== key) left.set(key, meant);
    else left.delete(key);
  }
  return { fault: 'half-mirrored', hand, keys: follow };
}

function shiftedRow({ hand, keys }: HandRow, left: Map<KeyId, KeyId>): readonly MovedKeys[] {
  const places = new Map(keys.map((key, at) => [key, at]));
  const byStep = new Map<number, KeyId[]>();
  for (const key of keys) {
    const to = places.get(left.get(key) ?? '');
    const from = places.get(key) ?? 0;
    if (to === undefined || to === from) continue;
    byStep.set(to - from, [...(byStep.get(to - from) ?? []), key]);
  }
  return [...byStep].flatMap(([by, shifted]) => {
    if (shifted.length < LEAST_SHIFTED) return [];
    for (const key of shifted) left.delete(key);
    return [{ fault: 'row-shifted', hand, keys: shifted, by } as const];
  });
}

function swaps(board: Board, left: Map<KeyId, KeyId>): readonly MovedKeys[] {
  return inOrder(board, left).flatMap(([key, other]) => {
    if (left.get(key) !== other || left.get(other) !== key) return [];
    left.delete(key);
    left.delete(other);
    return [{ fault: 'swapped', keys: [key, other] } as const];
  });
}

function inOrder(board: Board, given: ReadonlyMap<KeyId, KeyId>): readonly (readonly [KeyId, KeyId])[] {
  return board.keys.flatMap(({ id }) => {
    const gives = given.get(id);
    return gives === undefined ? [] : [[id, gives] as const];
  });
}
