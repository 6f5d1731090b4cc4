import { chordsOf } from '../keymap/timing.ts';
import type { Chord, Keymap } from '../keymap/types.ts';
import { watchedChord, watchedChords } from './accidents.ts';
import { chordMisfires } from './chord-misfires.ts';
import { chordMissShare } from './chord-misses.ts';
import type { Situation } from './situation.ts';
import {
  type ChoicePoint,
  type DamagingRun,
  damagingRuns,
  leastHarm,
  type SuggestedChoice,
} from './study.ts';

/** What every window of a chord would bring on this text. */
export interface ChordStudy {
  readonly points: readonly ChoicePoint[];
  /** Null for a chord of five keys: only a simulation can say how often it misfires. */
  readonly suggested: SuggestedChoice | null;
  /** What does the damage with the chord as it is, the worst first. */
  readonly damage: readonly DamagingRun[];
}

/** The windows looked at, ms. */
export const WINDOWS = { from: 10, to: 200, step: 5 } as const;
/** Under this nothing is validated, so nothing there is suggested: intervals under 20 ms hardly occur in the sample. */
const SHORTEST_VALIDATED_MS = 25;
const MOST_DAMAGE = 6;

/**
 * Misfires and misses of a chord over its window, everything else as it is. The chord may be one of the design's (same
 * id) or one that is still being made.
 */
export function studyChord(situation: Situation, keymap: Keymap, chord: Chord): ChordStudy {
  const { runs } = situation;
  const own = chordsOf(keymap).findIndex(({ id }) => id === chord.id);
  const others = watchedChords(keymap, runs).filter((_, at) => at !== own);
  const at = (windowMs: number) => watchedChord(keymap, runs, { ...chord, windowMs });
  const points: ChoicePoint[] = [];
  for (let ms = WINDOWS.from; ms <= WINDOWS.to; ms += WINDOWS.step) {
    const watched = at(ms);
    const causes = chordMisfires(situation, watched, others);
    points.push({
      ms,
      misfires: (causes ?? []).reduce((sum, { per1000Words }) => sum + per1000Words, 0),
      misses: 1000 * chordMissShare(situation, watched, [...others, watched]),
    });
  }
  const now = chordMisfires(situation, at(chord.windowMs), others);
  const worst = (now ?? [])
    .toSorted((one, other) => other.per1000Words - one.per1000Words)
    .slice(0, MOST_DAMAGE);
  const uses = runs.presses.reduce(
    (sum, press, number) =>
      press.chord >= 0 && press.chord === own ? sum + (situation.kinds.per1000[number] ?? 0) : sum,
    0,
  );
  return {
    points,
    suggested: now === null ? null : leastHarm(points, uses, SHORTEST_VALIDATED_MS),
    damage: damagingRuns(keymap, situation, worst),
  };
}
