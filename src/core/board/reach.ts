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
