import type { HoldBy } from '../keymap/types.ts';
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

/** The fields of which more is tried. */
export type ProtectingField = 'holdAfterMs' | 'quietBeforeMs' | 'sameHandTaps' | 'holdBy';

/** At least so much of each field; what is left out stays as it is. */
export type Target = Partial<Pick<HoldTiming, ProtectingField>>;

/** Values that are tried, ms. Common practice, no source. */
const HOLD_AFTER_MS: readonly (number | undefined)[] = [undefined, 200, 250, 300];
const QUIET_BEFORE_MS: readonly (number | undefined)[] = [undefined, 100, 150, 200];
/** By a press inside a key becomes a hold soonest, by a tap inside later, by time alone last. */
const STRICTNESS: readonly HoldBy[] = ['press-inside', 'tap-inside', 'time-only'];
const RULES: readonly (HoldBy | undefined)[] = [undefined, 'tap-inside', 'time-only'];

/** All that is tried, without the fields that must stay as they are; the first changes nothing. */
export function targets(fixed: readonly ProtectingField[] = []): readonly Target[] {
  const values = <Value>(field: ProtectingField, tried: readonly (Value | undefined)[]) =>
    fixed.includes(field) ? [undefined] : tried;
  return values('holdAfterMs', HOLD_AFTER_MS).flatMap((holdAfterMs) =>
    values('quietBeforeMs', QUIET_BEFORE_MS).flatMap((quietBeforeMs) =>
      values('sameHandTaps', [undefined, true]).flatMap((sameHandTaps) =>
        values('holdBy', RULES).map((holdBy) => ({
          ...(holdAfterMs === undefined ? {} : { holdAfterMs }),
          ...(quietBeforeMs === undefined ? {} : { quietBeforeMs }),
          ...(sameHandTaps === undefined ? {} : { sameHandTaps }),
          ...(holdBy === undefined ? {} : { holdBy }),
        })),
      ),
    ),
  );
}

/** What each target brings for one key; protection is only added, never taken away. Worked out once for each timing. */
export function optionsOf(situation: Situation, place: HoldPlace): (target: Target) => HoldOption {
  const known = new Map<string, HoldOption>();
  return (target) => {
    const timing = atLeast(place.timing, target);
    const name = JSON.stringify(timing);
    const found = known.get(name) ?? optionWith(situation, place, timing);
    known.set(name, found);
    return found;
  };
}

/** The options of one key: the first is the timing in force; then by fields changed, misses and misfires. */
export function holdOptions(situation: Situation, place: HoldPlace): readonly HoldOption[] {
  const option = optionsOf(situation, place);
  return [...new Set(targets().map(option))].sort(
    (one, other) =>
      changes(one) - changes(other) || one.misses - other.misses || one.misfires - other.misfires,
  );
}

/** How many fields an option changes. */
export function changes({ change }: HoldOption): number {
  return Object.keys(change).length;
}

function atLeast(now: HoldTiming, target: Target): HoldTiming {
  const { holdAfterMs = 0, quietBeforeMs = 0, sameHandTaps = false, holdBy = now.holdBy } = target;
  return {
    ...now,
    holdAfterMs: Math.max(now.holdAfterMs, holdAfterMs),
    quietBeforeMs: Math.max(now.quietBeforeMs, quietBeforeMs),
    sameHandTaps: now.sameHandTaps || sameHandTaps,
    holdBy: STRICTNESS.indexOf(holdBy) > STRICTNESS.indexOf(now.holdBy) ? holdBy : now.holdBy,
  };
}

function optionWith(situation: Situation, place: HoldPlace, timing: HoldTiming): HoldOption {
  const { misfiresPer1000Words, missesPer1000Uses } = holdAccidents(situation, { ...place, timing });
  return {
    change: changeOf(place.timing, timing),
    misfires: misfiresPer1000Words,
    misses: missesPer1000Uses,
  };
}

function changeOf(now: HoldTiming, to: HoldTiming): Partial<HoldTiming> {
  return {
    ...(to.holdBy === now.holdBy ? {} : { holdBy: to.holdBy }),
    ...(to.holdAfterMs === now.holdAfterMs ? {} : { holdAfterMs: to.holdAfterMs }),
    ...(to.quietBeforeMs === now.quietBeforeMs ? {} : { quietBeforeMs: to.quietBeforeMs }),
    ...(to.sameHandTaps === now.sameHandTaps ? {} : { sameHandTaps: to.sameHandTaps }),
  };
}
