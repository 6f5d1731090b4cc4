import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import { parseJson } from '../keymap/parse-json.ts';
import { type Problem, type ReadProblem, readProblem } from '../keymap/problem.ts';
import { problemsOfShape } from '../keymap/shape-problems.ts';
import { FINGERS } from './dwells.ts';
import { LONGEST_DWELL_MS, PAUSE_MS } from './fit-observe.ts';
import { addedTo, GROUP_COUNT, type Measured, NOTHING_MEASURED } from './measured.ts';
import { BAND_LIMITS } from './parameters.ts';

/** What was measured of a typist, as it is kept and handed out: times without order, and no keys. */
export interface MeasuredFile extends Measured {
  readonly format: 'measured-typist';
  readonly version: 1;
  /** When the latest of it was measured, ms since 1970. */
  readonly measuredAt: number;
  /** See `clockStepMs`. */
  readonly clockStepMs: number;
}

/** What a file may hold at most; times are more than a patient person types in a day of measuring. */
export const MEASURED_LIMITS = { fileBytes: 16 * 1024 * 1024, times: 50_000, chords: 2_000 } as const;

const ms = (most: number) => z.number().check(z.gt(0), z.lt(most));
const index = (count: number) => z.int().check(z.gte(0), z.lt(count));

const fileSchema = z.strictObject({
  format: z.literal('measured-typist'),
  version: z.literal(1),
  measuredAt: z.number().check(z.gte(0)),
  clockStepMs: z.number().check(z.gte(0)),
  intervals: z
    .array(
      z.strictObject({
        group: index(GROUP_COUNT),
        band: z.nullable(index(BAND_LIMITS.length + 1)),
        ms: ms(PAUSE_MS),
      }),
    )
    .check(z.maxLength(MEASURED_LIMITS.times)),
  dwells: z
    .array(z.strictObject({ finger: index(FINGERS), ms: ms(LONGEST_DWELL_MS) }))
    .check(z.maxLength(MEASURED_LIMITS.times)),
  chords: z
    .array(
      z.strictObject({
        hands: z.enum(['one', 'two']),
        onsetsMs: z
          .array(z.number().check(z.gte(0), z.lt(PAUSE_MS)))
          .check(z.minLength(2), z.maxLength(FINGERS)),
      }),
    )
    .check(z.maxLength(MEASURED_LIMITS.chords)),
});

/** Reads what was measured from a JSON value; the problem is a phrase that says what is wrong and where. */
export function readMeasured(value: unknown): Result<MeasuredFile, string> {
  const read = z.safeParse(fileSchema, value);
  if (read.success) return ok(read.data);
  const where = read.error.issues[0]?.path.join('.') ?? '';
  return fail(`not what was measured of a typist${where === '' ? '' : ` (${where})`}`);
}

/** More problems than a person reads. */
const MOST_PROBLEMS = 20;

/**
 * Reads the text of a file that was handed out: size, JSON, format and version, shape, in that order; the problems are those
 * of the first of these that fails. Times come sorted, whatever order they stand in.
 */
export function readMeasuredText(text: string): Result<MeasuredFile, readonly ReadProblem[]> {
  if (text.length > MEASURED_LIMITS.fileBytes) {
    const expected = `${MEASURED_LIMITS.fileBytes / 1024 / 1024} MiB at most`;
    return failAs([{ path: [], found: 'a larger text', expected }]);
  }
  const parsed = parseJson(text);
  if (!parsed.ok) return parsed;
  const stranger = strangerProblem(parsed.value);
  if (stranger !== null) return failAs([stranger]);
  const read = z.safeParse(fileSchema, parsed.value);
  if (!read.success) return failAs(problemsOfShape(read.error.issues, parsed.value));
  return ok({ ...read.data, ...addedTo(NOTHING_MEASURED, read.data) });
}

/** A file of another kind, or of a later version, is named as such instead of by its fields. */
function strangerProblem(value: unknown): Problem | null {
  const found = 'something else';
  const expected = 'measured figures: an object with "format": "measured-typist"';
  if (typeof value !== 'object' || value === null || !('format' in value)) {
    return { path: [], found, expected };
  }
  if (value.format !== 'measured-typist') return { path: [], found, expected };
  const isLater = 'version' in value && typeof value.version === 'number' && value.version > 1;
  if (!isLater) return null;
  return { path: ['version'], found: String(value.version), expected: '1, the newest that is known here' };
}

function failAs(problems: readonly Problem[]): Result<never, readonly ReadProblem[]> {
  return fail(problems.slice(0, MOST_PROBLEMS).map(readProblem));
}

/** Whether both together are no more than a file may hold. */
export function fitTogether(one: Measured, other: Measured): boolean {
  const { times, chords } = MEASURED_LIMITS;
  return (
    one.intervals.length + other.intervals.length <= times &&
    one.dwells.length + other.dwells.length <= times &&
    one.chords.length + other.chords.length <= chords
  );
}

/** The file that is handed out; reading it gives the same again. */
export function writeMeasured(file: MeasuredFile): string {
  return `${JSON.stringify(file, null, 1)}\n`;
}
