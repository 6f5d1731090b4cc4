import { isModifier } from '../keymap/codes.ts';
import type { Action, ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';

/** What a set of keys gets in the way of. */
export type Conflict =
  | { readonly what: 'larger-chord' | 'smaller-chord'; readonly chord: ChordId }
  | { readonly what: 'hold-tap' | 'held-key'; readonly key: KeyId };

type HeldKey = Extract<Conflict, { readonly key: KeyId }>;

/** In misfires per 1,000 words; judgement, no source. */
const COSTS = { 'hold-tap': 1, 'held-key': 8 };

/** A key that is held for something on one of the layers; a key that falls through does what it does on the base layer. */
export function heldOn(keymap: Keymap, key: KeyId, layers: readonly LayerId[]): HeldKey | null {
  let found: HeldKey | null = null;
  const base = keymap.layers[0]?.places ?? {};
  for (const { id, places } of keymap.layers) {
    if (!layers.includes(id)) continue;
    const from = Object.hasOwn(places, key) ? places : base;
    const { tap, hold } = (Object.hasOwn(from, key) ? from[key] : undefined) ?? {};
    if (tap !== undefined && hold !== undefined) found ??= { what: 'hold-tap', key };
    else if (isHeldFor(tap ?? hold)) return { what: 'held-key', key };
  }
  return found;
}

/** Layers while held, and keys that are nothing but a modifier, are down while others are pressed. */
function isHeldFor(action: Action | undefined): boolean {
  if (action?.do === 'layer') return action.mode === 'while-held';
  return action?.do === 'key' && isModifier(action.code);
}

/** What it costs a set to have that key in it. */
export function costOfKey(held: HeldKey | null): number {
  return held === null ? 0 : COSTS[held.what];
}
