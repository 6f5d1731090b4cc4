import type { HostLayout } from '../host/host-layout.ts';
import type { LegendSource } from '../host/legend.ts';
import type { Keymap } from '../keymap/types.ts';
import { diagnoseBoard } from './diagnose-board.ts';
import { type FaultWords, faultWords, type StepsInWords } from './fault-words.ts';
import type { Checked } from './given-keys.ts';
import type { StepResult, Verdict } from './judge.ts';
import type { SightKind } from './sight.ts';
import { cameWords, stepGives, stepName } from './step-words.ts';
import type { CheckPlan, CheckStep } from './steps.ts';

/** What a check came to, ready to be read or written as JSON. */
export interface CheckReport {
  readonly design: string;
  /** When it was made, as an ISO 8601 date and time that is handed in. */
  readonly at: string;
  readonly counts: Readonly<Record<Verdict | 'notPressed' | 'byEye' | 'unreached', number>>;
  readonly faults: readonly (FaultWords & { readonly kind: string })[];
  readonly steps: readonly {
    readonly what: string;
    readonly expected: string;
    readonly verdict: Verdict | 'not pressed';
    readonly came: string;
  }[];
  /** What no browser sees, to be looked at by whoever checks. */
  readonly byEye: readonly { readonly what: string; readonly expected: string; readonly why: string }[];
  readonly unreached: readonly string[];
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
  results: ReadonlyMap<string, StepResult>,
  at: string,
  seen: ReadonlySet<SightKind>,
): CheckReport {
  const source: LegendSource = { keymap, host };
  // A lock that is over by now does not undo what was pressed under it.
  const isPressed = ({ id, sight }: CheckStep) => seen.has(sight.kind) || results.has(id);
  const pressed = plan.steps.filter(isPressed);
  const byEye = plan.steps.filter((step) => !isPressed(step) && step.sight.kind !== 'by-its-effect');
  const checked = pressed.flatMap((step): Checked[] => {
    const result = results.get(step.id);
    return result === undefined ? [] : [{ step, result }];
  });
  const names = new Map(plan.steps.map((step) => [step.id, stepName(source, step)]));
  const inWords: StepsInWords = {
    name: (step) => names.get(step) ?? step,
    came: (step) => {
      const result = results.get(step);
      return result === undefined ? 'nothing' : cameWords(result);
    },
  };
  const of = (verdict: Verdict) => checked.filter(({ result }) => result.verdict === verdict).length;
  return {
    design: keymap.name,
    at,
    counts: {
      right: of('right'),
      wrong: of('wrong'),
      silent: of('silent'),
      notPressed: pressed.length - checked.length,
      byEye: byEye.length,
      unreached: plan.unreached.length,
    },
    faults: diagnoseBoard(keymap, host, checked).map((fault) => ({
      kind: fault.fault,
      ...faultWords(keymap, fault, inWords),
    })),
    steps: pressed.map((step) => {
      const result = results.get(step.id);
      const verdict = result?.verdict ?? 'not pressed';
      const came = result === undefined ? '' : cameWords(result);
      return { what: stepName(source, step), expected: stepGives(source, step), verdict, came };
    }),
    byEye: byEye.map((step) => ({
      what: stepName(source, step),
      expected: stepGives(source, step),
      why: step.sight.why,
    })),
    unreached: plan.unreached,
    caution: CAUTION,
  };
}
