import * as z from 'zod/mini';
import { LAST_MOMENT_MS } from '../base/moment.ts';
import { LIMITS } from '../keymap/limits.ts';
import type { Session } from './session.ts';
import { STANDINGS } from './standing.ts';

const text = z.string();
const number = z.number();
const moment = number.check(z.gte(0), z.lte(LAST_MOMENT_MS));
const orNull = <Inner extends z.ZodMiniType>(inner: Inner) => z.nullable(inner);

const apart = { apartMs: orNull(number), windowMs: number };
const held = { key: text, heldMs: orNull(number), holdAfterMs: number, rule: orNull(text) };
const modifier = z.enum(['Control', 'Shift', 'Alt', 'Meta']);

const faultSchema = z.discriminatedUnion('fault', [
  z.object({
    fault: z.literal('chord-missed'),
    chord: text,
    ...apart,
    broken: orNull(z.enum(['other-key', 'too-short', 'not-quiet'])),
  }),
  z.object({ fault: z.literal('chord-incomplete'), chord: text, missing: z.array(text) }),
  z.object({ fault: z.literal('chord-by-mistake'), chord: text, ...apart }),
  z.object({ fault: z.literal('tap-for-hold'), ...held }),
  z.object({ fault: z.literal('hold-for-tap'), ...held }),
  z.object({ fault: z.literal('wrong-layer'), on: text, needed: text, rightKey: z.boolean() }),
  z.object({ fault: z.literal('modifier-missing'), modifier }),
  z.object({ fault: z.literal('modifier-extra'), modifier }),
  z.object({ fault: z.literal('came-early') }),
  z.object({
    fault: z.enum(['old-place', 'mirrored-hand', 'neighbour', 'other-key']),
    key: text,
    meant: text,
  }),
  z.object({ fault: z.literal('nothing-there'), key: text }),
  z.object({ fault: z.literal('unknown') }),
]);

const diagnosisSchema = z.object({ sure: z.boolean(), faults: z.array(faultSchema) });

const sessionSchema = z.object({
  id: text,
  startedAt: moment,
  endedAt: orNull(moment),
  activeMs: number,
  seed: number,
  minutes: number,
  input: z.enum(['engine', 'board']),
  routes: z.record(text, z.object({ signature: text, words: text, keys: z.array(text) })),
  attempts: z.array(
    z.object({
      need: text,
      at: moment,
      right: z.boolean(),
      ms: orNull(number),
      hinted: z.boolean(),
      diagnosis: orNull(diagnosisSchema),
    }),
  ),
  prompts: z.array(
    z.object({
      needs: z.array(text),
      focus: text,
      standing: z.enum(STANDINGS),
      shape: z.enum(['company', 'transition', 'alone']),
    }),
  ),
  position: z.int().check(z.gte(0), z.lte(LIMITS.needs)),
  slip: orNull(diagnosisSchema),
  hinted: z.boolean(),
});

/** Takes what was stored for a session if it is one; null for anything else. */
export function readSession(stored: unknown): Session | null {
  const read = sessionSchema.safeParse(stored);
  return read.success ? read.data : null;
}
