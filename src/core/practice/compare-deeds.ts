import { neighbourOf } from '../board/neighbours.ts';
import { postsOf } from '../board/posts.ts';
import { modifierName } from '../host/produces-exactly.ts';
import type { Code } from '../keymap/codes.ts';
import type { ModifierName } from '../keymap/need.ts';
import type { Board, KeyId, Keymap } from '../keymap/types.ts';
import { type Deed, highestOn, layerOfDeed } from './deed.ts';
import type { Fault } from './fault.ts';

/** What a press that typed something wrong differs by from the one that was meant: key, layer, modifiers, each by itself. */
export function compareDeeds(
  keymap: Keymap,
  meant: Deed,
  done: Deed,
  oldKeys: readonly KeyId[] = [],
): readonly Fault[] {
  return [
    ...keyFault(keymap.board, meant, done, oldKeys),
    ...layerFault(keymap, meant, done),
    ...modifierFaults(meant, done),
  ];
}

function keyFault(board: Board, meant: Deed, done: Deed, oldKeys: readonly KeyId[]): readonly Fault[] {
  const [key = ''] = done.keys;
  const [wanted = ''] = meant.keys;
  if (meant.keys.includes(key) || done.chord !== null) return [];
  return [{ fault: kindOfWrongKey(board, key, meant.keys, oldKeys), key, meant: wanted }];
}

/** The first that holds of: where the need was before, the other hand's same key, the next key, any other. */
function kindOfWrongKey(
  board: Board,
  key: KeyId,
  wanted: readonly KeyId[],
  oldKeys: readonly KeyId[],
): 'old-place' | 'mirrored-hand' | 'neighbour' | 'other-key' {
  if (oldKeys.includes(key)) return 'old-place';
  if (wanted.some((each) => mirrorOf(board, each) === key)) return 'mirrored-hand';
  if (wanted.some((each) => areNeighbours(board, each, key))) return 'neighbour';
  return 'other-key';
}

/** The key at the same post of the other hand; null where there is none. Of several the first on the board. */
export function mirrorOf(board: Board, keyId: KeyId): KeyId | null {
  const posts = postsOf(board);
  const post = posts.get(keyId);
  if (post === undefined) return null;
  const { column, row, key } = post;
  const mirrored = board.keys.find((other) => {
    const its = posts.get(other.id);
    return (
      other.hand !== key.hand && other.finger === key.finger && its?.column === column && its.row === row
    );
  });
  return mirrored?.id ?? null;
}

const WAYS = ['left', 'right', 'up', 'down'] as const;

/** Whether one is the nearest key of the other in some direction, on one hand. */
export function areNeighbours(board: Board, one: KeyId, other: KeyId): boolean {
  const handOf = (id: KeyId) => board.keys.find((key) => key.id === id)?.hand;
  if (handOf(one) !== handOf(other)) return false;
  return WAYS.some((way) => neighbourOf(board, one, way) === other || neighbourOf(board, other, way) === one);
}

function layerFault(keymap: Keymap, meant: Deed, done: Deed): readonly Fault[] {
  const needed = layerOfDeed(keymap, meant);
  const on = layerOfDeed(keymap, done) ?? highestOn(keymap, done.layers);
  if (needed === undefined || needed === on) return [];
  const rightKey = done.chord === meant.chord && done.keys.every((key) => meant.keys.includes(key));
  // Another key may fall through to a lower layer though the right one is on.
  if (!rightKey && highestOn(keymap, done.layers) === highestOn(keymap, meant.layers)) return [];
  return [{ fault: 'wrong-layer', on, needed, rightKey }];
}

function modifierFaults(meant: Deed, done: Deed): readonly Fault[] {
  const wanted = namesOf(meant.modifiers);
  const had = namesOf(done.modifiers);
  return [
    ...[...wanted]
      .filter((name) => !had.has(name))
      .map((modifier) => ({ fault: 'modifier-missing', modifier }) as const),
    ...[...had]
      .filter((name) => !wanted.has(name))
      .map((modifier) => ({ fault: 'modifier-extra', modifier }) as const),
  ];
}

function namesOf(codes: readonly Code[]): ReadonlySet<ModifierName> {
  return new Set(codes.map(modifierName).filter((name) => name !== undefined));
}
