import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import type { Follower, RunCounts } from './counts-runs.ts';

/** The counts of a ready text, as they lie in a file; the text itself is not kept. */
export interface CountsTable {
  readonly name: string;
  readonly title: string;
  /** Where the text comes from, in words. */
  readonly source: string;
  readonly licence: string;
  /** Size of the running text, bytes in UTF-8. */
  readonly bytes: number;
  readonly counts: RunCounts;
}

/** The texts whose counts come with the project, by name; each is `<name>.json` in the folder of texts. */
export const READY_TEXTS = [
  'english',
  'german',
  'french',
  'spanish',
  'portuguese',
  'polish',
  'code',
] as const;

const count = z.int().check(z.positive());

/** A row: the characters before, those that follow joined into one text, and their counts. */
const tableSchema = z.strictObject({
  name: z.string(),
  title: z.string(),
  source: z.string(),
  licence: z.string(),
  bytes: count,
  total: count,
  rows: z.array(z.tuple([z.string(), z.string(), z.array(count)])),
});

/** Reads a table of counts; the problem is a phrase that says what is wrong with it. */
export function readCountsTable(value: unknown): Result<CountsTable, string> {
  const read = z.safeParse(tableSchema, value);
  if (!read.success)
    return fail(`not a table of text counts (${read.error.issues[0]?.path.join('.') ?? ''})`);
  const { total, rows, ...about } = read.data;
  const after = new Map<string, readonly Follower[]>();
  for (const [before, following, counts] of rows) {
    const chars = [...following];
    if (chars.length !== counts.length)
      return fail(`${JSON.stringify(before)}: as many counts as characters expected`);
    after.set(
      before,
      chars.map((char, at) => ({ char, count: counts[at] ?? 0 })),
    );
  }
  return ok({ ...about, counts: { total, after } });
}

/** The table as it is kept in a file: one JSON text on one line. */
export function writeCountsTable({ counts, ...about }: CountsTable): string {
  const rows = [...counts.after].map(([before, followers]) => [
    before,
    followers.map(({ char }) => char).join(''),
    followers.map((follower) => follower.count),
  ]);
  return `${JSON.stringify({ ...about, total: counts.total, rows })}\n`;
}
