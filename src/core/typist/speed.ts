import { GROUP_NAMES, GROUPS, type GroupName } from './parameters.ts';
import { FASTEST_WPM, type Person, personAt, SLOWEST_WPM } from './person.ts';

/** How fast the typist is said to type: a group of the sample, an exact speed in words per minute, or as measured. */
export type Speed = GroupName | number | 'measured';

/** What holds before anything is chosen. */
export const USUAL_SPEED: Speed = 'average';

/** How much wider than a skilled hand's the chords of somebody who is new to them are taken to be: an assumption. */
export const SPREAD_FACTORS = { least: 1, most: 2 } as const;

/** Whether a value that was kept is a speed. */
export function isSpeed(value: unknown): value is Speed {
  if (typeof value === 'number') return value >= SLOWEST_WPM && value <= FASTEST_WPM;
  return value === 'measured' || GROUP_NAMES.some((name) => name === value);
}

/** Words per minute of a speed; null for the measured one. */
export function wpmOf(speed: Speed): number | null {
  if (typeof speed === 'number') return speed;
  return speed === 'measured' ? null : GROUPS[speed].wpm;
}

/** The typists of a speed. Who has not been measured yet and asks for it gets the usual speed. */
export function personOfSpeed(speed: Speed, spreadFactor: number, measured: Person | null): Person {
  if (speed === 'measured' && measured !== null) return measured;
  return personAt(wpmOf(speed) ?? GROUPS.average.wpm, spreadFactor);
}
