import { type HoldPlace, holdAccidents } from './accidents.ts';
import type { HoldTiming } from './hold-misfires.ts';
import type { Situation } from './situation.ts';

/** Another timing for a hold/tap key that makes it misfire less: what to change, and what that brings. */
export interface HoldOption {
  /** The fields that change, as they would be. */
  readonly change: Partial<HoldTiming>;
  readonly misfires: number;
  readonly misses: number;
}

const STRONGEST_MS = { holdAfter: 300, quietBefore: 200 };

/** Values that are tried, ms. Common practice, no source. */
const HOLD_AFTER_MS: readonly number[] = [200, 250, STRONGEST_MS.holdAfter];
const QUIET_BEFORE_MS: readonly number[] = [100, 150, STRONGEST_MS.quietBefore];

/** Which fields may be changed; a hold that must come soon after another press bears no quiet before. */
export type Changeable = Readonly<
  Record<'holdAfterMs' | 'quietBeforeMs' | 'sameHandTaps' | 'holdBy', boolean>
>;

/** The most that is tried of each field. */
export const STRONGEST = {
  holdAfterMs: STRONGEST_MS.holdAfter,
  quietBeforeMs: STRONGEST_MS.quietBefore,
  sameHandTaps: true,
  holdBy: 'time-only',
} as const;

export const ALL_CHANGEABLE: Changeable = {
  holdAfterMs: true,
  quietBeforeMs: true,
  sameHandTaps: true,
  holdBy: true,
};

/**
 * All timings of a key that only add protection to the one in force: a longer hold after, a stricter rule, more quiet, taps
 * by the same hand. The first is the timing in force, without a change; then by fields changed, misses and misfires.
 */
export function holdOptions(
  situation: Situation,
  place: HoldPlace,
  changeable: Changeable = ALL_CHANGEABLE,
): readonly HoldOption[] {
  const { timing } = place;
  const options: HoldOption[] = [];
  for (const holdAfterMs of moreOf(timing.holdAfterMs, HOLD_AFTER_MS, changeable.holdAfterMs))
    for (const quietBeforeMs of moreOf(timing.quietBeforeMs, QUIET_BEFORE_MS, changeable.quietBeforeMs))
      for (const sameHandTaps of timing.sameHandTaps || !changeable.sameHandTaps
        ? [timing.sameHandTaps]
        : [false, true])
        for (const holdBy of stricter(timing, changeable.holdBy)) {
          const tried = { ...timing, holdAfterMs, quietBeforeMs, sameHandTaps, holdBy };
          const { misfiresPer1000Words, missesPer1000Uses } = holdAccidents(situation, {
            ...place,
            timing: tried,
          });
          options.push({
            change: changeOf(timing, tried),
            misfires: misfiresPer1000Words,
            misses: missesPer1000Uses,
          });
        }
  return options.sort(
    (one, other) =>
      changes(one) - changes(other) || one.misses - other.misses || one.misfires - other.misfires,
  );
}

/** How many fields an option changes. */
export function changes({ change }: HoldOption): number {
  return Object.keys(change).length;
}

function moreOf(now: number, values: readonly number[], may: boolean): readonly number[] {
  return may ? [now, ...values.filter((value) => value > now)] : [now];
}

/** By a press inside becomes a hold soonest, by a tap inside later, by time alone last. */
function stricter({ holdBy }: HoldTiming, may: boolean): readonly HoldTiming['holdBy'][] {
  if (!may || holdBy === 'time-only') return [holdBy];
  return holdBy === 'tap-inside' ? ['tap-inside', 'time-only'] : ['press-inside', 'tap-inside', 'time-only'];
}

function changeOf(now: HoldTiming, to: HoldTiming): Partial<HoldTiming> {
  return {
    ...(to.holdAfterMs === now.holdAfterMs ? {} : { holdAfterMs: to.holdAfterMs }),
    ...(to.quietBeforeMs === now.quietBeforeMs ? {} : { quietBeforeMs: to.quietBeforeMs }),
    ...(to.sameHandTaps === now.sameHandTaps ? {} : { sameHandTaps: to.sameHandTaps }),
    ...(to.holdBy === now.holdBy ? {} : { holdBy: to.holdBy }),
  };
}
