import * as z from 'zod/mini';
import { momentSchema } from '../../core/base/moment.ts';
import type { KeyRenaming } from '../../core/board/key-renaming.ts';
import { HELD_STATES } from '../../core/check/computer-state.ts';
import { type EyeVerdict, type StepResult, strokesText } from '../../core/check/judge.ts';
import { type CheckStep, renamedStep } from '../../core/check/steps.ts';
import { MODIFIERS } from '../../core/keymap/codes.ts';

/** A step's result with what was expected when it was pressed: of a design that has changed since, it says nothing. */
export interface KeptResult extends StepResult {
  readonly expected: string;
}

/** What whoever checks has found by looking at a step themselves. */
export interface KeptLook {
  readonly step: string;
  readonly verdict: EyeVerdict;
  /** What was expected then; null in checks that were kept before this was taken down. */
  readonly expected: string | null;
}

/** A check as it is kept: begun, perhaps stopped, perhaps over. Times in ms since 1970; 0 before anything was taken down. */
export interface KeptCheck {
  readonly begunAt: number;
  /** When something was last taken down. */
  readonly lastAt: number;
  readonly results: readonly KeptResult[];
  readonly byEye: readonly KeptLook[];
}

export const NO_CHECK: KeptCheck = { begunAt: 0, lastAt: 0, results: [], byEye: [] };

/** The result as it is kept. */
export function keptResult(step: CheckStep, result: StepResult): KeptResult {
  return { ...result, expected: strokesText(step.expects) };
}

/** A look as it is kept. */
export function keptLook(step: CheckStep, verdict: EyeVerdict): KeptLook {
  return { step: step.id, verdict, expected: lookText(step) };
}

/** What is looked for: the strokes, or what the board does where it sends none. */
function lookText({ expects, action }: CheckStep): string {
  return expects.length > 0 ? strokesText(expects) : JSON.stringify(action);
}

/** The results that still say something about the steps of a design, by step. */
export function resultsFor(kept: KeptCheck, steps: readonly CheckStep[]): ReadonlyMap<string, StepResult> {
  const expected = new Map(steps.map((step) => [step.id, strokesText(step.expects)]));
  return new Map(
    kept.results
      .filter((result) => expected.get(result.step) === result.expected)
      .map((result) => [result.step, result]),
  );
}

/** A check after keys of the board were given other ids. */
export function renamedCheck(kept: KeptCheck, renaming: KeyRenaming): KeptCheck {
  return {
    ...kept,
    results: kept.results.map((result) => ({ ...result, step: renamedStep(result.step, renaming) })),
    byEye: kept.byEye.map((look) => ({ ...look, step: renamedStep(look.step, renaming) })),
  };
}

/** What was found by eye and still says something about the steps of a design, by step. */
export function looksFor(kept: KeptCheck, steps: readonly CheckStep[]): ReadonlyMap<string, EyeVerdict> {
  const sought = new Map(steps.map((step) => [step.id, lookText(step)]));
  return new Map(
    kept.byEye
      .filter(
        ({ step, expected }) => sought.has(step) && (expected === null || sought.get(step) === expected),
      )
      .map(({ step, verdict }) => [step, verdict]),
  );
}

const text = z.string();

const resultSchema = z.object({
  step: text,
  verdict: z.enum(['right', 'wrong', 'silent']),
  expected: text,
  strokes: z.array(
    z.object({
      code: text,
      with: z.array(z.enum(MODIFIERS)),
      key: text,
      timeMs: z.number(),
      carried: z.exactOptional(z.array(z.enum(HELD_STATES))),
      caps: z.exactOptional(z.literal(true)),
    }),
  ),
  otherCharacters: z.boolean(),
  bounces: z.array(z.object({ code: text, gapMs: z.number() })),
  stuck: z.array(text),
});

const lookSchema = z.object({
  step: text,
  verdict: z.enum(['right', 'wrong']),
  expected: z._default(z.nullable(text), null),
});

const checkSchema = z.object({
  begunAt: momentSchema,
  lastAt: z.optional(momentSchema),
  results: z.array(z.unknown()),
  byEye: z.array(z.unknown()),
});

/** Takes what was stored for a check if it is one, without what of it cannot be read; anything else is as good as none. */
export function readCheck(stored: unknown): KeptCheck | null {
  const read = checkSchema.safeParse(stored);
  if (!read.success) return null;
  const { begunAt, lastAt, results, byEye } = read.data;
  return {
    begunAt,
    lastAt: lastAt ?? begunAt,
    results: results.flatMap(readResult),
    byEye: byEye.flatMap(readLook),
  };
}

function readResult(value: unknown): readonly KeptResult[] {
  const read = resultSchema.safeParse(value);
  return read.success ? [read.data] : [];
}

/** A look; a bare step is a tick of an earlier version, which said that it was right. */
function readLook(value: unknown): readonly KeptLook[] {
  if (typeof value === 'string') return [{ step: value, verdict: 'right', expected: null }];
  const read = lookSchema.safeParse(value);
  return read.success ? [read.data] : [];
}
