// SCRATCH placeholder, never committed: the owner of this room overwrites it.
import { keyName } from '../board/key-name.ts';
import type { Keymap } from '../keymap/types.ts';
import type { Route } from './types.ts';
export function describeSteps(keymap: Keymap, route: Route): string[] {
  return route.steps.map((s) => `${s.move} ${s.keys.map((k) => keyName(keymap.board, k)).join(' + ')}`);
}
