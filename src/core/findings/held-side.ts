import { timingOf } from '../keymap/timing.ts';
import type { Binding, Keymap, Side } from '../keymap/types.ts';

/**
 * Whether what one side of a binding presses can stay down. A tap of a hold/tap key is settled as the key comes up
 * (rule S3), so it is over at once, unless a rule makes it a tap while the key is down (S4, S10, S11).
 */
export function canStayDown(keymap: Keymap, binding: Binding, side: Side): boolean {
  if (side === 'hold' || binding.hold === undefined) return true;
  const { sameHandTaps, quietBeforeMs, againWithinMs } = timingOf(keymap, binding);
  return sameHandTaps || quietBeforeMs > 0 || againWithinMs > 0;
}
