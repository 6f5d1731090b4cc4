import { fail, ok, type Result } from '../core/base/result.ts';
import { FASTEST_WPM, type Person, personAt, SLOWEST_WPM } from '../core/typist/person.ts';

/** Typists of the speed asked for, words per minute; the sample's average where none is. The problem is a sentence. */
export function personOf(wpm: string | undefined): Result<Person, string> {
  if (wpm === undefined) return ok(personAt(USUAL_WPM));
  const speed = Number(wpm);
  if (wpm.trim() === '' || !(speed >= SLOWEST_WPM && speed <= FASTEST_WPM))
    return fail(
      `--wpm: found ${JSON.stringify(wpm)}, expected words per minute from ${SLOWEST_WPM} to ${FASTEST_WPM}.`,
    );
  return ok(personAt(speed));
}

/** The mean of the sample's group "average". */
const USUAL_WPM = 48.5;

/** A whole number in a range, for an option; the problem is a sentence. */
export function wholeNumber(
  option: string,
  text: string,
  least: number,
  most: number,
): Result<number, string> {
  const value = Number(text);
  if (!/^\d+$/.test(text) || value < least || value > most)
    return fail(
      `--${option}: found ${JSON.stringify(text)}, expected a whole number from ${least} to ${most}.`,
    );
  return ok(value);
}
