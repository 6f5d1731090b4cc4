import type { HoldBy, Keymap, Place } from '../keymap/types.ts';
import { type HoldPlace, holdAccidents, holdPlaces } from './accidents.ts';
import type { HoldTiming } from './hold-misfires.ts';
import type { Situation } from './situation.ts';
import {
  type ChoicePoint,
  type DamagingRun,
  damagingRuns,
  leastHarm,
  type SuggestedChoice,
} from './study.ts';

/** The rules by which a hold/tap key becomes a hold, in the order of the timing rules. */
export const HOLD_RULES: readonly HoldBy[] = ['time-only', 'press-inside', 'tap-inside'];

/** What can be put in force against misfires, beside the rule. */
export type Protection = 'none' | 'quiet-before' | 'again-within' | 'same-hand-taps' | 'all';

/** In the order of the table. */
export const PROTECTIONS: readonly Protection[] = [
  'none',
  'quiet-before',
  'again-within',
  'same-hand-taps',
  'all',
];

/** Quiet before and again within as the table tries them, ms. Common practice, no source; about an average typist's interval. */
export const TRIED_MS = 150;

/** One rule with one protection: what it brings, and the fields that put it in force. */
export interface RuleCell {
  readonly holdBy: HoldBy;
  readonly protection: Protection;
  readonly misfires: number;
  readonly misses: number;
  readonly timing: Omit<HoldTiming, 'holdAfterMs'>;
  /** Whether it is what is in force now. */
  readonly inForce: boolean;
}

/** What every choice for a hold/tap key would bring on this text. */
export interface HoldStudy {
  /** Over hold after. */
  readonly points: readonly ChoicePoint[];
  readonly suggested: SuggestedChoice | null;
  readonly damage: readonly DamagingRun[];
  /** By protection, then by rule. */
  readonly table: readonly RuleCell[];
}

/** The times looked at, ms. */
export const HOLD_AFTER = { from: 100, to: 400, step: 10 } as const;
const MOST_DAMAGE = 6;

/** Misfires and misses of a hold/tap key over hold after, and under each rule and protection; null where it is none. */
export function studyHold(situation: Situation, keymap: Keymap, place: Place): HoldStudy | null {
  const own = holdPlaces(keymap).find(({ key, layer }) => key === place.key && layer === place.layer);
  if (own === undefined) return null;
  const rates = (timing: HoldTiming) => ratesWith(situation, own, timing);
  const points: ChoicePoint[] = [];
  for (let ms = HOLD_AFTER.from; ms <= HOLD_AFTER.to; ms += HOLD_AFTER.step)
    points.push({ ms, ...rates({ ...own.timing, holdAfterMs: ms }) });
  const now = holdAccidents(situation, own);
  return {
    points,
    suggested: leastHarm(points, usesOf(situation, own), HOLD_AFTER.from),
    damage: damagingRuns(keymap, situation, now.causes.slice(0, MOST_DAMAGE)),
    table: PROTECTIONS.flatMap((protection) =>
      HOLD_RULES.map((holdBy) => cell(own.timing, holdBy, protection, rates)),
    ),
  };
}

function ratesWith(situation: Situation, place: HoldPlace, timing: HoldTiming) {
  const { misfiresPer1000Words, missesPer1000Uses } = holdAccidents(situation, { ...place, timing });
  return { misfires: misfiresPer1000Words, misses: missesPer1000Uses };
}

function cell(
  now: HoldTiming,
  holdBy: HoldBy,
  protection: Protection,
  rates: (timing: HoldTiming) => { readonly misfires: number; readonly misses: number },
): RuleCell {
  const timing = {
    holdBy,
    quietBeforeMs: protection === 'quiet-before' || protection === 'all' ? TRIED_MS : 0,
    againWithinMs: protection === 'again-within' || protection === 'all' ? TRIED_MS : 0,
    sameHandTaps: protection === 'same-hand-taps' || protection === 'all',
    tapIfAlone: now.tapIfAlone,
  };
  const inForce =
    now.holdBy === holdBy &&
    now.quietBeforeMs === timing.quietBeforeMs &&
    now.againWithinMs === timing.againWithinMs &&
    now.sameHandTaps === timing.sameHandTaps;
  return { holdBy, protection, timing, inForce, ...rates({ holdAfterMs: now.holdAfterMs, ...timing }) };
}

/** How often the text itself uses the hold, in 1,000 words. */
function usesOf({ runs, kinds }: Situation, { key, layerNumber }: HoldPlace): number {
  const number = runs.compiled.keyNumbers.get(key) ?? -1;
  return runs.presses.reduce(
    (sum, press, at) =>
      press.asHold && press.keys[0] === number && press.place === layerNumber
        ? sum + (kinds.per1000[at] ?? 0)
        : sum,
    0,
  );
}
