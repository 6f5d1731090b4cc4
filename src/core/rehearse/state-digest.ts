import type { Keymap } from '../keymap/types.ts';
import { writeKeymap } from '../keymap/write.ts';

const remembered = new WeakMap<Keymap, string>();

/**
 * A short digest of a design, to tell whether it is still as it was: of its written form without diary, notes and name.
 * FNV-1a over UTF-16 units, twice with different beginnings: 64 bits, to tell states apart and not to keep secrets.
 */
export function stateDigest(keymap: Keymap): string {
  const known = remembered.get(keymap);
  if (known !== undefined) return known;
  const { diary: _diary, notes: _notes, ...rest } = keymap;
  const text = writeKeymap({ ...rest, name: '-' });
  const digest = hex(fnv(text, 0x811c9dc5)) + hex(fnv(text, 0x050c5d1f));
  remembered.set(keymap, digest);
  return digest;
}

function fnv(text: string, start: number): number {
  let hash = start;
  for (let at = 0; at < text.length; at++) hash = Math.imul(hash ^ text.charCodeAt(at), 0x01000193);
  return hash >>> 0;
}

function hex(value: number): string {
  return value.toString(16).padStart(8, '0');
}
