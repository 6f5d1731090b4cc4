import { bindingOn } from '../keymap/lookup.ts';
import { timingOf } from '../keymap/timing.ts';
import type { Facts } from './facts.ts';
import type { ResolvedChord } from './resolved-chord.ts';

/** Whether a chord with this window would keep one of its keys waiting beyond the key's own hold after. */
export function outlastsHold({ keymap }: Facts, chord: ResolvedChord, windowMs: number): boolean {
  return keymap.layers.some((layer) =>
    chord.boardKeys.some((key) => {
      const binding = bindingOn(layer, key.id);
      return binding?.hold !== undefined && timingOf(keymap, binding).holdAfterMs <= windowMs;
    }),
  );
}
