import type { ResolvedChord } from './resolved-chord.ts';

/**
 * How far apart the first and the last key of a chord come, ms, for skilled hands: [ms, percent of chords within it].
 * Computed from the Vienna 4x22 piano performances (Goebl). Chords of more than three keys are not in it; theirs are
 * wider than those of three.
 */
const SPREADS = {
  'two-key chords of one hand': [
    [0, 0],
    [16, 50],
    [38, 90],
    [45, 95],
    [63, 99],
  ],
  'three-key chords of one hand': [
    [0, 0],
    [25, 50],
    [51, 90],
    [63, 95],
  ],
  'two-key chords of two hands': [
    [0, 0],
    [16, 50],
    [41, 90],
    [53, 95],
  ],
  'three-key chords of two hands': [
    [0, 0],
    [31, 50],
    [55, 90],
    [66, 95],
    [102, 99],
  ],
} as const satisfies Record<string, readonly (readonly [number, number])[]>;

/** Which hands and how many keys a figure is for. */
export type SpreadGroup = keyof typeof SPREADS;

/** Windows under this, ms, are not validated: shorter intervals hardly occur in the data on typing. */
export const SHORTEST_VALIDATED_MS = 25;

/** How much wider a beginner's chords may be than a skilled hand's. An assumption: no published figure was found. */
export const BEGINNER_FACTOR = 2;

/** The group of figures that fits a chord; four and five keys take the figures for three, as the least they need. */
export function spreadGroup(chord: ResolvedChord): SpreadGroup {
  const hands = new Set(chord.boardKeys.map((key) => key.hand)).size;
  const count = chord.keys.length > 2 ? 'three' : 'two';
  return hands > 1 ? `${count}-key chords of two hands` : `${count}-key chords of one hand`;
}

/** The share of chords, in percent, whose keys come within a window; straight lines between the figures. */
export function caughtPercent(group: SpreadGroup, windowMs: number): number {
  const points: readonly (readonly [number, number])[] = SPREADS[group];
  const after = points.findIndex(([ms]) => ms >= windowMs);
  if (after < 0) return points.at(-1)?.[1] ?? 0;
  const [toMs, toPercent] = points[after] ?? [0, 0];
  const [fromMs, fromPercent] = points[after - 1] ?? [0, 0];
  if (toMs === fromMs) return toPercent;
  return fromPercent + ((windowMs - fromMs) / (toMs - fromMs)) * (toPercent - fromPercent);
}

/** The window, ms, within which 95 % of the chords of skilled hands come. */
export function windowFor95(group: SpreadGroup): number {
  const points: readonly (readonly [number, number])[] = SPREADS[group];
  return points.find(([, percent]) => percent === 95)?.[0] ?? 0;
}
