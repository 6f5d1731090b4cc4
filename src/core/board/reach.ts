import type { Board, BoardKey, KeyId } from '../keymap/types.ts';
import { distanceMm } from './point.ts';

/** The keys among those given that one finger would press: groups of two and more, in the order given. */
export function oneFingerGroups(board: Board, keys: readonly KeyId[]): readonly (readonly KeyId[])[] {
  const groups = new Map<string, KeyId[]>();
  for (const key of keysOf(board, keys)) {
    const finger = `${key.hand} ${key.finger}`;
    groups.set(finger, [...(groups.get(finger) ?? []), key.id]);
  }
  return [...groups.values()].filter((group) => group.length > 1);
}

/** The largest distance between the centres of two of the given caps that one hand presses, mm; 0 without such a pair. */
export function handSpanMm(board: Board, keys: readonly KeyId[]): number {
  const known = keysOf(board, keys);
  let widest = 0;
  for (const one of known) {
    for (const other of known) {
      if (one.hand === other.hand) widest = Math.max(widest, distanceMm(one, other));
    }
  }
  return widest;
}

function keysOf(board: Board, ids: readonly KeyId[]): readonly BoardKey[] {
  return ids.flatMap((id) => board.keys.find((key) => key.id === id) ?? []);
}

/**
 * How far a finger goes from its home key, centre to centre, mm: two rows up and one column aside at full pitch are
 * 42.6 mm, and what lies further takes the hand along. Common practice, no source: hands differ.
 */
export const FINGER_REACH_MM = 45;

/** The key on which the finger of a key rests, the first of several; undefined where it has none. */
export function homeOf(
  board: Board,
  { hand, finger }: Pick<BoardKey, 'hand' | 'finger'>,
): BoardKey | undefined {
  return board.keys.find((key) => key.home && key.hand === hand && key.finger === finger);
}

/** A key that its finger does not reach from its home key, and how far away it lies, mm. */
export interface FarKey {
  readonly key: KeyId;
  readonly home: KeyId;
  readonly mm: number;
}

/** The keys beyond their finger's reach, in the board's order; fingers without a home key have no such measure. */
export function keysOutOfReach(board: Board, reachMm = FINGER_REACH_MM): readonly FarKey[] {
  return board.keys.flatMap((key) => {
    const home = homeOf(board, key);
    if (home === undefined) return [];
    const mm = distanceMm(home, key);
    return mm > reachMm ? [{ key: key.id, home: home.id, mm }] : [];
  });
}
