import { samePlain } from '../base/same-plain.ts';
import type { Board, BoardKey, KeyId } from '../keymap/types.ts';

/** What became of a key of the board. A key that is in another finger's care or elsewhere is a change of that key. */
export type BoardChange =
  | { readonly what: 'added'; readonly key: KeyId }
  | { readonly what: 'gone'; readonly key: KeyId }
  | {
      readonly what: 'changed';
      readonly key: KeyId;
      /** How far the middle of the cap moved, mm. */
      readonly movedMm: number;
      readonly turned: boolean;
      readonly resized: boolean;
      /** Another hand, finger or home. */
      readonly otherFinger: boolean;
    };

/** Less than this is no move that anybody sees or feels, mm and degrees. */
const UNSEEN = 0.05;

/** The keys that differ between two boards, in the order of the later one, those that are gone after them. */
export function boardChanges(before: Board, after: Board): readonly BoardChange[] {
  if (samePlain(before.keys, after.keys)) return [];
  const then = new Map(before.keys.map((key) => [key.id, key]));
  const now = new Set(after.keys.map(({ id }) => id));
  return [
    ...after.keys.flatMap((key) => keyChange(then.get(key.id), key)),
    ...before.keys.filter(({ id }) => !now.has(id)).map(({ id }) => ({ what: 'gone', key: id }) as const),
  ];
}

function keyChange(before: BoardKey | undefined, after: BoardKey): readonly BoardChange[] {
  if (before === undefined) return [{ what: 'added', key: after.id }];
  const movedMm = Math.hypot(after.x - before.x, after.y - before.y);
  const turned = Math.abs(after.rotation - before.rotation) > UNSEEN;
  const resized = before.width !== after.width || before.height !== after.height;
  const otherFinger =
    before.hand !== after.hand || before.finger !== after.finger || before.home !== after.home;
  if (movedMm <= UNSEEN && !turned && !resized && !otherFinger) return [];
  return [{ what: 'changed', key: after.id, movedMm, turned, resized, otherFinger }];
}
