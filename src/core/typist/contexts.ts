import type { Kinds } from './kinds.ts';
import type { PressRuns } from './press-runs.ts';

/** A press that stands beside a run, and how often it does in 1,000 words. */
export interface Beside {
  readonly press: number;
  readonly per1000Words: number;
}

/** What stands around a press, a pair or a triple of presses. */
export interface Contexts {
  /** What comes before a run of one, two or three presses, as far as the longer runs are known. */
  before(run: readonly number[]): readonly Beside[];
  /** What comes after one press; exact. */
  after(press: number): readonly Beside[];
  /** Triples of presses around a middle one. */
  around(
    press: number,
  ): readonly { readonly before: number; readonly after: number; readonly per1000Words: number }[];
  /** Times in 1,000 words; as far as it is known for triples and quadruples. */
  countOf(run: readonly number[]): number;
  /** Presses of one key each, by key. */
  readonly ofKey: ReadonlyMap<number, readonly number[]>;
}

const NONE: readonly Beside[] = [];

/** Indexes the runs of presses once. */
export function contextsOf({ presses, runs }: PressRuns, kinds: Kinds): Contexts {
  const count = presses.length;
  const pack = (run: readonly number[]) => run.reduce((packed, press) => packed * count + press + 1, 0);
  const before = new Map<number, Beside[]>();
  const counts = new Map<number, number>();
  const after: Beside[][] = presses.map(() => []);
  const around: { before: number; after: number; per1000Words: number }[][] = presses.map(() => []);
  for (const { presses: run, per1000Words } of runs.slice(1).flat()) {
    const [first = 0, second = 0, third = 0] = run;
    const rest = pack(run.slice(1));
    const list = before.get(rest);
    if (list === undefined) before.set(rest, [{ press: first, per1000Words }]);
    else list.push({ press: first, per1000Words });
    if (run.length === 2) after[first]?.push({ press: second, per1000Words });
    else counts.set(pack(run), per1000Words);
    if (run.length === 3) around[second]?.push({ before: first, after: third, per1000Words });
  }
  const ofKey = new Map<number, number[]>();
  for (const [number, { keys }] of presses.entries()) {
    const [key = 0] = keys;
    if (keys.length === 1) ofKey.set(key, [...(ofKey.get(key) ?? []), number]);
  }
  return {
    before: (run) => before.get(pack(run)) ?? NONE,
    after: (press) => after[press] ?? NONE,
    around: (press) => around[press] ?? [],
    countOf(run) {
      const [first = 0, second = 0] = run;
      return run.length === 2 ? (kinds.pairs[first * count + second] ?? 0) : (counts.get(pack(run)) ?? 0);
    },
    ofKey,
  };
}
