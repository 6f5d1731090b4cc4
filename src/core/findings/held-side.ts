import { type EffectiveTiming, timingOf, timingOfChord } from '../keymap/timing.ts';
import type { Binding, Chord, Keymap, Side } from '../keymap/types.ts';

/**
 * Whether what one side of a binding presses can be on while another key acts. The tap of a hold/tap key is pressed as
 * the key comes up, before the keys that came meanwhile (rules S2 and S3), so it serves those; but with `press-inside`
 * any of them makes it a hold first (S5), unless another rule makes it a tap while it is down (S4, S10, S11).
 */
export function canStayDown(keymap: Keymap, binding: Binding, side: Side): boolean {
  return side === 'hold' || binding.hold === undefined || tapCanStayDown(timingOf(keymap, binding));
}

/** The same for the action of a chord: the tap where it has a hold. */
export function chordCanStayDown(keymap: Keymap, chord: Chord): boolean {
  return chord.hold === undefined || tapCanStayDown(timingOfChord(keymap, chord));
}

function tapCanStayDown(timing: EffectiveTiming): boolean {
  const { holdBy, sameHandTaps, quietBeforeMs, againWithinMs } = timing;
  return holdBy !== 'press-inside' || sameHandTaps || quietBeforeMs > 0 || againWithinMs > 0;
}
