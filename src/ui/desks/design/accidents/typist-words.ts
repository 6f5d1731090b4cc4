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
