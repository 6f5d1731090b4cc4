import { fail, ok, type Result } from '../core/base/result.ts';
import { LIMITS } from '../core/keymap/limits.ts';
import { fitOf, LEAST_LETTER_PAIRS, personOfFit } from '../core/typist/fit-person.ts';
import { readMeasured } from '../core/typist/measured-file.ts';
import { FASTEST_WPM, type Person, personAt, SLOWEST_WPM } from '../core/typist/person.ts';
import { readJson } from './read-text.ts';

/** Who types, as the options say: a speed, or a file with what was measured of somebody; never both. */
export interface PersonOptions {
  readonly wpm?: string | undefined;
  readonly typist?: string | undefined;
}

/** The typists asked for; the sample's average where none is. The problem is a sentence. */
export function personOf({ wpm, typist }: PersonOptions): Result<Person, string> {
  if (typist !== undefined)
    return wpm === undefined
      ? measuredPerson(typist)
      : fail('--wpm and --typist: a typist who was measured has a speed; give one of the two.');
  if (wpm === undefined) return ok(personAt(USUAL_WPM));
  const speed = Number(wpm);
  if (wpm.trim() === '' || !(speed >= SLOWEST_WPM && speed <= FASTEST_WPM))
    return fail(
      `--wpm: found ${JSON.stringify(wpm)}, expected words per minute from ${SLOWEST_WPM} to ${FASTEST_WPM}.`,
    );
  return ok(personAt(speed));
}

/** The person of a file that the page has handed out. */
function measuredPerson(file: string): Result<Person, string> {
  const json = readJson(file, LIMITS.fileBytes);
  if (!json.ok) return json;
  const read = readMeasured(json.value);
  if (!read.ok) return fail(`--typist: ${file} is ${read.problem}.`);
  const person = personOfFit(fitOf(read.value));
  return person === null
    ? fail(`--typist: ${file} holds too little; it takes ${LEAST_LETTER_PAIRS} intervals between letters.`)
    : ok(person);
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
