import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import { CODES, type Code, MODIFIERS } from '../keymap/codes.ts';
import type { ComposeTable } from './compose.ts';

/**
 * The combinations of a table row, in its order: plain, Shift, level 3, Shift and level 3, and the same four with
 * Caps Lock on.
 */
const COMBINATIONS = 8;

/** A character, a dead key by its XKB name (`dead_acute`), or '' for nothing. */
const outputs = z
  .array(z.string().check(z.regex(/^(?:|dead_\w{1,40}|[\s\S]{1,8})$/u)))
  .check(z.length(COMBINATIONS));

/** The shape of a host table as it lies in a file. */
const hostTableSchema = z.strictObject({
  layout: z.string(),
  variant: z.string(),
  title: z.string(),
  level3: z.nullable(z.enum(MODIFIERS)),
  keys: z.partialRecord(z.enum(CODES), outputs),
  compose: z.record(
    z.string().check(z.regex(/^dead_\w+(?: dead_\w+)?$/)),
    z.record(z.string(), z.string().check(z.minLength(1), z.maxLength(8))),
  ),
});

/** How a computer reads the keys, as generated from XKB. Keys without any character are left out. */
export interface HostTable {
  readonly layout: string;
  readonly variant: string;
  /** XKB's own name for the layout: "German (Switzerland)". */
  readonly title: string;
  /** The key that chooses level 3, null where the layout has none. */
  readonly level3: (typeof MODIFIERS)[number] | null;
  /** Eight outputs a key, in the order that `COMBINATIONS` states. */
  readonly keys: Readonly<Partial<Record<Code, readonly string[]>>>;
  /** What the layout's dead keys make of its characters, where Unicode's canonical composition does not say so itself. */
  readonly compose: ComposeTable;
}

/** Checks a table that came from outside. The problem is a sentence with the path of the first fault. */
export function readHostTable(json: unknown): Result<HostTable, string> {
  const read = hostTableSchema.safeParse(json);
  if (read.success) return ok(read.data);
  const issue = read.error.issues[0];
  return fail(`not a host table: ${issue?.path.join('.') || 'the whole'}: ${issue?.message ?? 'unreadable'}`);
}
