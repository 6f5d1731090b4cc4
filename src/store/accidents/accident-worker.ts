import { type Remote, wrap } from 'comlink';
import type { HostTable } from '../../core/host/host-table.ts';
import type { RunCounts } from '../../core/needs/counts-runs.ts';
import type { AccidentJudge, TypedDesign } from '../../workers/accident-judge.ts';

/** A design as it is typed, with its text and the computer that it is typed on. */
export type TypedDesignWithText = Omit<TypedDesign, 'number'> & {
  readonly counts: RunCounts;
  readonly table: HostTable;
};

type Asked<Answer> = (judge: Remote<AccidentJudge>, design: TypedDesign) => Promise<Answer>;

let judge: Remote<AccidentJudge> | null = null;
let failed: Promise<never> | null = null;
let text: RunCounts | null = null;
let table: HostTable | null = null;
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

/** Asks the worker about a design; text and host layout go over only when they are others. Questions are answered in their order. */
export async function askJudge<Answer>(design: TypedDesignWithText, asked: Asked<Answer>): Promise<Answer> {
  const { counts, table: newTable, ...rest } = design;
  const remote = started();
  if (text !== counts) {
    text = counts;
    void remote.setText(counts);
  }
  if (table !== newTable) {
    table = newTable;
    void remote.setHost(newTable);
  }
  if (latest === null || !isSameDesign(latest, design)) {
    latest = design;
    number++;
  }
  const answer = asked(remote, { ...rest, number });
  return failed === null ? answer : Promise.race([answer, failed]);
}
