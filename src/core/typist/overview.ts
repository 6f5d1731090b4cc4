import type { ChordId, KeyId, Keymap, LayerId } from '../keymap/types.ts';
import type { Accidents, DelayOfKey } from './accidents.ts';
import type { Situation } from './situation.ts';
import { type DamagingRun, damagingRuns } from './study.ts';

/** Something on the design that can go off. */
export type Offender =
  | { readonly what: 'chord'; readonly chord: ChordId }
  | { readonly what: 'hold'; readonly key: KeyId; readonly layer: LayerId };

/** What one of them does, per 1,000 words and per 1,000 uses, with the runs that do most of the damage. */
export interface Offence {
  readonly offender: Offender;
  /** Null for a chord of five keys: only a simulation can say. */
  readonly misfires: number | null;
  readonly misses: number;
  /** See `ChordAccidents`; null for keys, and for chords without a hold. */
  readonly holds: number | null;
  readonly damage: readonly DamagingRun[];
}

/** All accidents of a design at a glance. */
export interface Overview {
  /** Misfires of everything together, per 1,000 words. */
  readonly misfires: number;
  /** The worst first; of equals chords before holds, then in the document's order. */
  readonly offences: readonly Offence[];
  /** The mean wait of a letter or other tap, ms, over all that the text presses. */
  readonly meanDelayMs: number;
  /** What waits, the longest first. */
  readonly delay: readonly DelayOfKey[];
}

const MOST_DAMAGE = 3;

/** Brings the accidents of a design into one list. */
export function overviewOf(
  keymap: Keymap,
  situation: Situation,
  { chords, holds, delay }: Accidents,
): Overview {
  const damage = (causes: Parameters<typeof damagingRuns>[2]) =>
    damagingRuns(keymap, situation, causes.slice(0, MOST_DAMAGE));
  const offences: readonly Offence[] = [
    ...chords.map(({ id, misfiresPer1000Words, missesPer1000Uses, holdsPer1000Uses, causes }) => ({
      offender: { what: 'chord' as const, chord: id },
      misfires: misfiresPer1000Words,
      misses: missesPer1000Uses,
      holds: holdsPer1000Uses,
      damage: damage(causes),
    })),
    ...holds.map(({ key, layer, misfiresPer1000Words, missesPer1000Uses, causes }) => ({
      offender: { what: 'hold' as const, key, layer },
      misfires: misfiresPer1000Words,
      misses: missesPer1000Uses,
      holds: null,
      damage: damage(causes),
    })),
  ];
  const presses = situation.kinds.per1000.reduce((sum, each) => sum + each, 0);
  const waited = delay.reduce((sum, { meanMs, per1000Words }) => sum + meanMs * per1000Words, 0);
  return {
    misfires: offences.reduce((sum, { misfires }) => sum + (misfires ?? 0), 0),
    offences: offences.toSorted((one, other) => (other.misfires ?? 0) - (one.misfires ?? 0)),
    meanDelayMs: presses === 0 ? 0 : waited / presses,
    delay: delay.toSorted((one, other) => other.meanMs - one.meanMs),
  };
}
