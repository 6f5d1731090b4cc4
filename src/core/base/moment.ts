/** The last time of day that can be told, ms since 1970 (ECMA-262, time values and time range). */
export const LAST_MOMENT_MS = 8.64e15;

/** Whether this is a time of day that can be told, ms since 1970. */
export function isMoment(value: unknown): value is number {
  return typeof value === 'number' && value >= 0 && value <= LAST_MOMENT_MS;
}
