import { GROUP_NAMES, GROUPS, type GroupName } from '../../../../core/typist/parameters.ts';
import { FASTEST_WPM, SLOWEST_WPM } from '../../../../core/typist/person.ts';
import type { Speed } from '../../../../core/typist/speed.ts';

/** A speed as it can be chosen: a group, an exact number, or as measured. */
export type SpeedKind = GroupName | 'exact' | 'measured';

/** Limits of an exact speed, words per minute. */
export const WPM_LIMITS = { min: SLOWEST_WPM, max: FASTEST_WPM, step: 1 } as const;

const GROUP_WORDS: Readonly<Record<GroupName, string>> = {
  slow: 'slow',
  average: 'average',
  fast: 'fast',
  veryFast: 'very fast',
};

/** How far the keys of a chord come apart, beside skilled hands; what is more than that is an assumption. */
export const SPREADS = [
  { value: '1', label: 'as skilled hands’' },
  { value: '1.5', label: '1.5 times as far apart (assumed)' },
  { value: '2', label: 'twice as far apart (assumed)' },
] as const;

/** The spread on offer that is nearest to a factor. */
export function spreadChoice(factor: number): (typeof SPREADS)[number]['value'] {
  return factor < 1.25 ? '1' : factor < 1.75 ? '1.5' : '2';
}

/** Which kind of choice a speed is. */
export function kindOfSpeed(speed: Speed): SpeedKind {
  return typeof speed === 'number' ? 'exact' : speed;
}

/** The speed that choosing a kind stands for; an exact one begins at `wpm`. */
export function speedOfKind(kind: SpeedKind, wpm: number): Speed {
  return kind === 'exact' ? Math.round(wpm) : kind;
}

/** The speeds on offer, in words per minute where they stand for one; the measured one says whether there is any. */
export function speedOptions(
  hasMeasured: boolean,
): readonly { readonly value: SpeedKind; readonly label: string }[] {
  return [
    ...GROUP_NAMES.map((name) => ({
      value: name,
      label: `${GROUP_WORDS[name]}, about ${Math.round(GROUPS[name].wpm)} words a minute`,
    })),
    { value: 'exact', label: 'an exact speed' },
    ...(hasMeasured ? [{ value: 'measured' as const, label: 'as I was measured' }] : []),
  ];
}
