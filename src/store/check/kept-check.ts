import type { KeyRenaming } from '../../core/board/key-renaming.ts';
import { type StepResult, strokesText } from '../../core/check/judge.ts';
import { type CheckStep, renamedStep } from '../../core/check/steps.ts';

/** A step's result with what was expected when it was pressed: of a design that has changed since, it says nothing. */
export interface KeptResult extends StepResult {
  readonly expected: string;
}

/** A check as it is kept: begun, perhaps stopped, perhaps over. */
export interface KeptCheck {
  /** When it was begun, ms since 1970. */
  readonly begunAt: number;
  readonly results: readonly KeptResult[];
  /** Steps that whoever checks has looked at themselves and found right. */
  readonly byEye: readonly string[];
}

export const NO_CHECK: KeptCheck = { begunAt: 0, results: [], byEye: [] };

/** The result as it is kept. */
export function keptResult(step: CheckStep, result: StepResult): KeptResult {
  return { ...result, expected: strokesText(step.expects) };
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
    byEye: kept.byEye.map((step) => renamedStep(step, renaming)),
  };
}

/** Takes what was stored for a check if it is one; anything else is as good as none. */
export function readCheck(stored: unknown): KeptCheck | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { begunAt, results, byEye } = stored as Partial<Record<keyof KeptCheck, unknown>>;
  if (typeof begunAt !== 'number' || !Array.isArray(results) || !Array.isArray(byEye)) return null;
  return {
    begunAt,
    results: results.filter(isResult),
    byEye: byEye.filter((step) => typeof step === 'string'),
  };
}

function isResult(value: unknown): value is KeptResult {
  if (typeof value !== 'object' || value === null) return false;
  const result = value as Partial<Record<keyof KeptResult, unknown>>;
  const { step, verdict, expected, strokes, bounces, stuck } = result;
  const isNamed = typeof step === 'string' && typeof expected === 'string';
  const isJudged = verdict === 'right' || verdict === 'wrong' || verdict === 'silent';
  return isNamed && isJudged && [strokes, bounces, stuck].every(Array.isArray);
}
