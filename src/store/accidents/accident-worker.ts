import { type Remote, wrap } from 'comlink';
import type { RunCounts } from '../../core/needs/counts-runs.ts';
import type { AccidentJudge, TypedDesign } from '../../workers/accident-judge.ts';

/** A design as it is typed, with its text. */
export type TypedDesignWithText = Omit<TypedDesign, 'number'> & { readonly counts: RunCounts };

type Asked<Answer> = (judge: Remote<AccidentJudge>, design: TypedDesign) => Promise<Answer>;

let judge: Remote<AccidentJudge> | null = null;
let failed: Promise<never> | null = null;
let text: RunCounts | null = null;
let latest: TypedDesignWithText | null = null;
let number = 0;

function started(): Remote<AccidentJudge> {
  if (judge !== null) return judge;
  const worker = new Worker(new URL('../../workers/accidents.worker.ts', import.meta.url), {
    type: 'module',
  });
  failed = new Promise<never>((_, reject) => {
    worker.addEventListener('error', () => reject(new Error('The estimate could not be worked out.')));
  });
  failed.catch(() => undefined);
  judge = wrap<AccidentJudge>(worker);
  return judge;
}

/** Whether two are the same in every part, so that what is known of one holds for the other. */
export function isSameDesign(one: TypedDesignWithText, other: TypedDesignWithText): boolean {
  return (
    one.keymap === other.keymap &&
    one.table === other.table &&
    one.needs === other.needs &&
    one.person === other.person &&
    one.limits === other.limits &&
    one.counts === other.counts
  );
}

/** Asks the worker about a design; the text goes over only when it is another one. Questions are answered in their order. */
export async function askJudge<Answer>(design: TypedDesignWithText, asked: Asked<Answer>): Promise<Answer> {
  const { counts, ...rest } = design;
  const remote = started();
  if (text !== counts) {
    text = counts;
    void remote.setText(counts);
  }
  if (latest === null || !isSameDesign(latest, design)) {
    latest = design;
    number++;
  }
  const answer = asked(remote, { ...rest, number });
  return failed === null ? answer : Promise.race([answer, failed]);
}
