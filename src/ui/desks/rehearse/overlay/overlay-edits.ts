import type { Overlay } from '../../../../core/board/overlay.ts';
import type { KeyId } from '../../../../core/keymap/types.ts';

/** One code more: it stands for that key, and no other code does any longer. */
export function withCode(keys: Overlay['keys'], code: string, key: KeyId): Overlay['keys'] {
  return { ...withoutKey(keys, key), [code]: key };
}

/** No code stands for the key. */
export function withoutKey(keys: Overlay['keys'], key: KeyId): Overlay['keys'] {
  return Object.fromEntries(Object.entries(keys).filter(([, each]) => each !== key));
}
