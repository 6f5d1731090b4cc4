import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import { parseJson } from '../keymap/parse-json.ts';
import { type Problem, type ReadProblem, readProblem } from '../keymap/problem.ts';
import { problemsOfShape } from '../keymap/shape-problems.ts';
import { STREAM_LIMITS, type Stream } from './stream.ts';

const time = z.number().check(z.gte(0), z.lte(STREAM_LIMITS.latestMs));
const keyId = z.string().check(z.regex(/^[A-Za-z0-9_-]{1,16}$/u, '1 to 16 of A-Z a-z 0-9 _ -'));

const streamSchema = z.strictObject({
  format: z.literal('key-stream'),
  version: z.literal(1),
  name: z
    .string()
    .check(
      z.regex(
        new RegExp(`^[^\\n\\r]{1,${STREAM_LIMITS.nameLength}}$`, 'u'),
        'one line of 1 to 80 characters',
      ),
    ),
  made: z.discriminatedUnion('how', [
    z.strictObject({ how: z.literal('typed') }),
    z.strictObject({
      how: z.literal('written'),
      wpm: z.number().check(z.gte(1), z.lte(400)),
      spread: z.number().check(z.gte(0.1), z.lte(10)),
      seed: z.int(),
      measured: z.optional(z.literal(true)),
    }),
  ]),
  meant: z.nullable(z.string().check(z.maxLength(STREAM_LIMITS.meantLength))),
  events: z
    .array(z.strictObject({ t: time, key: keyId, type: z.enum(['down', 'up']) }))
    .check(z.maxLength(STREAM_LIMITS.events)),
});

/** More problems than a person reads. */
const MOST_PROBLEMS = 20;

/**
 * Reads a stream from the text of a file: size, JSON, format and version, shape, order of events, in that order; the
 * problems are those of the first of these that fails. Whether a design has the keys is looked at when it is played.
 */
export function readStream(text: string): Result<Stream, readonly ReadProblem[]> {
  if (text.length > STREAM_LIMITS.fileBytes) {
    const expected = `${STREAM_LIMITS.fileBytes / 1024 / 1024} MiB at most`;
    return failAs([{ path: [], found: 'a larger text', expected }]);
  }
  const parsed = parseJson(text);
  return parsed.ok ? checkStream(parsed.value) : parsed;
}

/** Reads a stream from a value, as JSON gives it. */
export function checkStream(value: unknown): Result<Stream, readonly ReadProblem[]> {
  const stranger = strangerProblem(value);
  if (stranger !== undefined) return failAs([stranger]);
  const parsed = z.safeParse(streamSchema, value);
  if (!parsed.success) return failAs(problemsOfShape(parsed.error.issues, value));
  const { name, made, meant, events } = parsed.data;
  const problem = orderProblem(events);
  return problem === undefined ? ok({ name, made, meant, events }) : failAs([problem]);
}

/** A file of another kind, or of a later version, is named as such instead of by its fields. */
function strangerProblem(value: unknown): Problem | undefined {
  if (typeof value !== 'object' || value === null || !('format' in value) || value.format !== 'key-stream') {
    const found = 'something else';
    return { path: [], found, expected: 'a stream of presses: an object with "format": "key-stream"' };
  }
  if ('version' in value && typeof value.version === 'number' && value.version > 1) {
    return { path: ['version'], found: String(value.version), expected: '1, the newest that is known here' };
  }
  return undefined;
}

/** Rule I1, as far as it can be told without a design. */
function orderProblem(events: Stream['events']): Problem | undefined {
  const down = new Set<string>();
  let before = 0;
  for (const [index, { t, key, type }] of events.entries()) {
    const path = ['events', index];
    if (t < before) return { path: [...path, 't'], found: String(t), expected: `${before} or later` };
    before = t;
    if (type === 'down' && down.has(key)) {
      return { path, found: `${key} going down twice`, expected: 'its release before' };
    }
    if (type === 'up' && !down.delete(key)) {
      return { path, found: `${key} coming up`, expected: 'a key that is down' };
    }
    if (type === 'down') down.add(key);
  }
  return undefined;
}

function failAs(problems: readonly Problem[]): Result<never, readonly ReadProblem[]> {
  return fail(problems.slice(0, MOST_PROBLEMS).map(readProblem));
}
