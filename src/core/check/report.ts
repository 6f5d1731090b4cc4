import type { HostLayout } from '../host/host-layout.ts';
import type { LegendSource } from '../host/legend.ts';
import type { Keymap } from '../keymap/types.ts';
import { diagnoseBoard } from './diagnose-board.ts';
import { eyeFaultWords, type FaultWords, faultWords, type StepsInWords } from './fault-words.ts';
import type { Checked } from './given-keys.ts';
import type { EyeVerdict, StepResult, Verdict } from './judge.ts';
import type { SightKind } from './sight.ts';
import { cameWords, stepGives, stepName } from './step-words.ts';
import type { CheckPlan, CheckStep } from './steps.ts';

/** What was taken down of a check, finished or not, by the ids of its steps. Times as ISO 8601 dates and times, UTC. */
export interface CheckRecord {
  readonly begunAt: string;
  /** When the last result was taken down. */
  readonly lastAt: string;
  readonly results: ReadonlyMap<string, StepResult>;
  /** What whoever checks has looked at themselves. */
  readonly byEye: ReadonlyMap<string, EyeVerdict>;
}

/** Something of the design in words: where it stands, and what it gives. */
interface Told {
  readonly what: string;
  readonly expected: string;
}

/** What a check came to, ready to be read or written as JSON. */
export interface CheckReport {
  readonly design: string;
  readonly begunAt: string;
  readonly lastAt: string;
  readonly counts: Readonly<Record<Verdict | 'notPressed' | 'unreached', number>> & {
    readonly byEye: Readonly<Record<EyeVerdict | 'notLookedAt', number>>;
  };
  readonly faults: readonly (FaultWords & { readonly kind: string })[];
  readonly steps: readonly (Told & { readonly verdict: Verdict | 'not pressed'; readonly came: string })[];
  /** What no browser sees, and what whoever checked found. */
  readonly byEye: readonly (Told & {
    readonly verdict: EyeVerdict | 'not looked at';
    readonly why: string;
  })[];
  /** What the design has and gives no way to. */
  readonly unreached: readonly Told[];
  /** How much of this is inferred. */
  readonly caution: string;
}

const CAUTION =
  'A browser sees what a real board sends and nothing else: layer keys, how far apart the keys of a chord came and what a hold keeps back are inferred from the results, and causes are likely ones.';

/** Makes the report of a check, finished or not. `seen`: which kinds of sight count as pressed through the browser. */
export function checkReport(
  keymap: Keymap,
  host: HostLayout,
  plan: CheckPlan,
  record: CheckRecord,
  seen: ReadonlySet<SightKind>,
): CheckReport {
  const source: LegendSource = { keymap, host };
  const { begunAt, lastAt, results } = record;
  // A lock that is over by now does not undo what was pressed under it.
  const isPressed = ({ id, sight }: CheckStep) => seen.has(sight.kind) || results.has(id);
  const pressed = plan.steps.filter(isPressed);
  const looked = plan.steps.filter((step) => !isPressed(step) && step.sight.kind !== 'by-its-effect');
  const told = (step: Pick<CheckStep, 'at' | 'action'>): Told => ({
    what: stepName(source, step),
    expected: stepGives(source, step),
  });
  const checked = pressed.flatMap((step): Checked[] => {
    const result = results.get(step.id);
    return result === undefined ? [] : [{ step, result }];
  });
  const inWords = stepsInWords(source, plan, results);
  return {
    design: keymap.name,
    begunAt,
    lastAt,
    counts: countsOf(plan, record, pressed, looked),
    faults: [
      ...diagnoseBoard(keymap, host, checked).map((fault) => ({
        kind: fault.fault,
        ...faultWords(keymap, fault, inWords),
      })),
      ...looked
        .filter(({ id }) => record.byEye.get(id) === 'wrong')
        .map((step) => ({ kind: 'wrong-by-eye', ...eyeFaultWords(told(step)) })),
    ],
    steps: pressed.map((step) => {
      const result = results.get(step.id);
      const came = result === undefined ? '' : cameWords(result);
      return { ...told(step), verdict: result?.verdict ?? 'not pressed', came };
    }),
    byEye: looked.map((step) => ({
      ...told(step),
      verdict: record.byEye.get(step.id) ?? 'not looked at',
      why: step.sight.why,
    })),
    unreached: plan.unreached.map(told),
    caution: CAUTION,
  };
}

function countsOf(
  plan: CheckPlan,
  { results, byEye }: CheckRecord,
  pressed: readonly CheckStep[],
  looked: readonly CheckStep[],
): CheckReport['counts'] {
  const of = (verdict: Verdict) => pressed.filter(({ id }) => results.get(id)?.verdict === verdict).length;
  const eye = (verdict: EyeVerdict) => looked.filter(({ id }) => byEye.get(id) === verdict).length;
  return {
    right: of('right'),
    wrong: of('wrong'),
    silent: of('silent'),
    notPressed: pressed.filter(({ id }) => !results.has(id)).length,
    unreached: plan.unreached.length,
    byEye: {
      right: eye('right'),
      wrong: eye('wrong'),
      notLookedAt: looked.filter(({ id }) => !byEye.has(id)).length,
    },
  };
}

function stepsInWords(
  source: LegendSource,
  plan: CheckPlan,
  results: ReadonlyMap<string, StepResult>,
): StepsInWords {
  const names = new Map(plan.steps.map((step) => [step.id, stepName(source, step)]));
  return {
    name: (step) => names.get(step) ?? step,
    came: (step) => {
      const result = results.get(step);
      return result === undefined ? 'nothing' : cameWords(result);
    },
  };
}
