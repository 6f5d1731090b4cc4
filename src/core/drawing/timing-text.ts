import { type EffectiveTiming, timingOf, timingOfChord } from '../keymap/timing.ts';
import type { Binding, Chord, Keymap } from '../keymap/types.ts';

const HOLD_BY = {
  'time-only': 'time only',
  'press-inside': 'a press inside',
  'tap-inside': 'a tap inside',
} as const;

/** The six timing fields in words; those that are off are left out. */
export function timingText(timing: EffectiveTiming): string {
  return [
    `hold after ${timing.holdAfterMs} ms`,
    `hold by ${HOLD_BY[timing.holdBy]}`,
    ...(timing.quietBeforeMs > 0 ? [`quiet before ${timing.quietBeforeMs} ms`] : []),
    ...(timing.againWithinMs > 0 ? [`again within ${timing.againWithinMs} ms`] : []),
    ...(timing.sameHandTaps ? ['same hand taps'] : []),
    ...(timing.tapIfAlone ? ['tap if held alone'] : []),
  ].join(', ');
}

/** What is in force for a binding; nothing for one without both sides, since there is nothing to settle. */
export function bindingTimingText(keymap: Keymap, binding: Binding): string {
  if (binding.tap === undefined || binding.hold === undefined) return '';
  return timingText(timingOf(keymap, binding));
}

/** The window of a chord and its quiet time, with which key it ends, and what settles it where it has a hold. */
export function chordTimingText(keymap: Keymap, chord: Chord): string {
  const quiet = chord.quietBeforeMs ?? 0;
  return [
    `window ${chord.windowMs} ms`,
    ...(quiet > 0 ? [`quiet before ${quiet} ms`] : []),
    ...(chord.release === 'last-up' ? ['ends with its last key'] : []),
    ...(chord.hold === undefined ? [] : [timingText(timingOfChord(keymap, chord))]),
  ].join(', ');
}
