import { isMoment } from '../../core/base/moment.ts';
import type { KeyRenaming } from '../../core/board/key-renaming.ts';
import { type EyeVerdict, type StepResult, strokesText } from '../../core/check/judge.ts';
import { readStepResult } from '../../core/check/read-result.ts';
import { type CheckStep, renamedStep } from '../../core/check/steps.ts';

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

/** Takes what was stored for a check if it is one, without what of it cannot be read; anything else is as good as none. */
export function readCheck(stored: unknown): KeptCheck | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { begunAt, lastAt, results, byEye } = stored as Partial<Record<keyof KeptCheck, unknown>>;
  if (!isMoment(begunAt) || !Array.isArray(results) || !Array.isArray(byEye)) return null;
  return {
    begunAt,
    lastAt: isMoment(lastAt) ? lastAt : begunAt,
    results: results.flatMap(readResult),
    byEye: byEye.flatMap(readLook),
  };
}

function readResult(value: unknown): readonly KeptResult[] {
  const result = readStepResult(value);
  const expected: unknown = Object(value).expected;
  return result === null || typeof expected !== 'string' ? [] : [{ ...result, expected }];
}

/** A look; a bare step is a tick of an earlier version, which said that it was right. */
function readLook(value: unknown): readonly KeptLook[] {
  if (typeof value === 'string') return [{ step: value, verdict: 'right', expected: null }];
  if (typeof value !== 'object' || value === null) return [];
  const { step, verdict, expected } = value as Partial<Record<keyof KeptLook, unknown>>;
  if (typeof step !== 'string' || (verdict !== 'right' && verdict !== 'wrong')) return [];
  return [{ step, verdict, expected: typeof expected === 'string' ? expected : null }];
}
