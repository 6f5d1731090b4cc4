import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import { FINGERS } from './dwells.ts';
import { LONGEST_DWELL_MS, PAUSE_MS } from './fit-observe.ts';
import { GROUP_COUNT, type Measured } from './measured.ts';
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

/** More than a patient person types in a day of measuring. */
const MOST_TIMES = 50_000;
const MOST_CHORDS = 2_000;

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
    .check(z.maxLength(MOST_TIMES)),
  dwells: z
    .array(z.strictObject({ finger: index(FINGERS), ms: ms(LONGEST_DWELL_MS) }))
    .check(z.maxLength(MOST_TIMES)),
  chords: z
    .array(
      z.strictObject({
        hands: z.enum(['one', 'two']),
        onsetsMs: z
          .array(z.number().check(z.gte(0), z.lt(PAUSE_MS)))
          .check(z.minLength(2), z.maxLength(FINGERS)),
      }),
    )
    .check(z.maxLength(MOST_CHORDS)),
});

/** Reads what was measured from a JSON value; the problem is a phrase that says what is wrong and where. */
export function readMeasured(value: unknown): Result<MeasuredFile, string> {
  const read = z.safeParse(fileSchema, value);
  if (read.success) return ok(read.data);
  const where = read.error.issues[0]?.path.join('.') ?? '';
  return fail(`not what was measured of a typist${where === '' ? '' : ` (${where})`}`);
}

/** The file that is handed out; reading it gives the same again. */
export function writeMeasured(file: MeasuredFile): string {
  return `${JSON.stringify(file, null, 1)}\n`;
}
