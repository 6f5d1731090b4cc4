import { type ChordToWatch, sharedWindow } from './chord-misfires.ts';
import { NODES } from './distributions.ts';
import { anyWithin } from './hold-misfires.ts';
import { ANY_LETTERS } from './pair-class.ts';
import type { Situation } from './situation.ts';
import { onsetSdMs, spreadWithin } from './spread.ts';
import { runWithin } from './together.ts';

/**
 * P(a chord that is meant does not come): spread wider than its window, too soon after another press, or its first key
 * taken by a chord with the key before it. That a chord follows like any letter on a letter is an assumption.
 */
export function chordMissShare(
  situation: Situation,
  { keys, windowMs, quietBeforeMs }: ChordToWatch,
  all: readonly ChordToWatch[],
): number {
  const { model, runs } = situation;
  const seats = keys.flatMap((key) => runs.seats[key] ?? []);
  const within = spreadWithin(windowMs, keys.length, onsetSdMs(seats, model.person.spreadFactor));
  const quiet = quietBeforeMs === 0 ? 1 : 1 - anyWithin(model, quietBeforeMs);
  return 1 - within * Math.min(quiet, 1 - takenShare(situation, keys, all));
}

/** P(the key before the chord, and the chord's first key, come as another chord may), over the presses of the text. */
function takenShare(
  { kinds, model, runs }: Situation,
  keys: readonly number[],
  all: readonly ChordToWatch[],
): number {
  let taken = 0;
  let presses = 0;
  for (const [number, press] of runs.presses.entries()) {
    const count = kinds.per1000[number] ?? 0;
    const [before = -1] = press.keys;
    presses += count;
    if (press.held || press.keys.length > 1) continue;
    const finger = kinds.fingers[number] ?? 0;
    for (const key of keys) {
      const window = sharedWindow(all, before, key, press.layer);
      if (window === 0) continue;
      const within = runWithin(model, [ANY_LETTERS], [finger], window);
      const share = NODES.reduce((sum, { weight }, node) => sum + weight * (within[node] ?? 0), 0);
      taken += (count * share) / keys.length;
    }
  }
  return presses === 0 ? 0 : taken / presses;
}
