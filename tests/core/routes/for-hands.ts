import { chordsOf } from '../../../src/core/keymap/timing.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';

/** No duration, or one that hands can tell apart: routes are not made to fit into less than ten milliseconds. */
export function isForHands(keymap: Keymap): boolean {
  const fits = (ms: number | undefined) => ms === undefined || ms === 0 || ms >= 10;
  const timings = [keymap.timing ?? {}, ...keymap.layers.flatMap((layer) => Object.values(layer.places))];
  return (
    timings.every((one) => fits(one.holdAfterMs) && fits(one.quietBeforeMs) && fits(one.againWithinMs)) &&
    chordsOf(keymap).every((chord) => fits(chord.windowMs) && fits(chord.quietBeforeMs))
  );
}
