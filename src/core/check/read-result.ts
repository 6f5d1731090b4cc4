import * as z from 'zod/mini';
import { MODIFIERS } from '../keymap/codes.ts';
import { HELD_STATES } from './computer-state.ts';
import type { StepResult } from './judge.ts';

const text = z.string();

const strokeSchema = z.object({
  code: text,
  with: z.array(z.enum(MODIFIERS)),
  key: text,
  timeMs: z.number(),
  carried: z.exactOptional(z.array(z.enum(HELD_STATES))),
  caps: z.exactOptional(z.literal(true)),
});

const resultSchema = z.object({
  step: text,
  verdict: z.enum(['right', 'wrong', 'silent']),
  strokes: z.array(strokeSchema),
  otherCharacters: z.boolean(),
  bounces: z.array(z.object({ code: text, gapMs: z.number() })),
  stuck: z.array(text),
});

/** Takes what was stored for the result of a step if it is one, through and through; null for anything else. */
export function readStepResult(stored: unknown): StepResult | null {
  const read = resultSchema.safeParse(stored);
  return read.success ? read.data : null;
}
