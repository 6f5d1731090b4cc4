import type { Board, KeyId } from '../keymap/types.ts';

/** What key ids are called after another board was put under a design, one to one; ids that are not in it stay. */
export type KeyRenaming = ReadonlyMap<KeyId, KeyId>;

/** The longest id that a stream can hold. */
const LONGEST = 16;

/**
 * The renaming that a change of boards comes to. A key that has no place on the new board keeps its id, unless another key
 * is called so now: then it goes by an id with `-gone`, so that nothing said of it is taken for the other's; and a new
 * key gets back what was said of it while it was gone. Undoing the change is the renaming reversed.
 */
export function keyRenaming(
  before: Board,
  after: Board,
  became: Readonly<Record<KeyId, KeyId>>,
): KeyRenaming {
  const [old, now] = [before, after].map(({ keys }) => new Set(keys.map(({ id }) => id)));
  const taken = new Set(Object.values(became));
  const lost = [...(old ?? [])].filter((id) => !Object.hasOwn(became, id) && now?.has(id));
  const fresh = [...(now ?? [])].filter((id) => !taken.has(id) && old?.has(id));
  const pairs: readonly (readonly [KeyId, KeyId])[] = [
    ...Object.entries(became),
    ...lost.map((id) => [id, gone(id)] as const),
    ...fresh.map((id) => [gone(id), id] as const),
  ];
  return new Map(pairs.filter(([from, to]) => from !== to));
}

/** The way back. */
export function reversed(renaming: KeyRenaming): KeyRenaming {
  return new Map([...renaming].map(([from, to]) => [to, from]));
}

/** What a key is called now. */
export function renamed(renaming: KeyRenaming, id: KeyId): KeyId {
  return renaming.get(id) ?? id;
}

function gone(id: KeyId): KeyId {
  return `${id.slice(0, LONGEST - 5)}-gone`;
}
