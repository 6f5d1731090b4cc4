import { differences } from './align.ts';
import { producedWord } from './key-words.ts';
import type { Item, Run } from './run.ts';

/** A stretch in which two runs of the same presses gave different things. Half-open, by item of each run. */
export interface RunDifference {
  readonly one: readonly Item[];
  readonly other: readonly Item[];
  /** The presses in question: from the first to the last of them, ms. */
  readonly fromMs: number;
  readonly toMs: number;
}

/** Two runs held side by side. */
export interface Comparison {
  readonly differences: readonly RunDifference[];
  /** How much later than the first run the second gave what both gave, ms; null where they have nothing in common. */
  readonly laterMs: { readonly mean: number; readonly most: number } | null;
  /** Outputs that both gave. */
  readonly alike: number;
}

/** Which outputs of two runs over the same stream differ, and where. Modifiers that came to nothing are left out. */
export function compareRuns(one: Run, other: Run): Comparison {
  const [ones, others] = [outputsOf(one), outputsOf(other)];
  const found = differences(ones.map(wordOf), others.map(wordOf));
  const pairs: (readonly [Item, Item])[] = [];
  let [at, otherAt] = [0, 0];
  for (const each of [...found, { oneFrom: ones.length, oneTo: 0, otherTo: 0 }]) {
    for (; at < each.oneFrom; at++, otherAt++) {
      const [a, b] = [ones[at], others[otherAt]];
      if (a !== undefined && b !== undefined) pairs.push([a, b]);
    }
    [at, otherAt] = [each.oneTo, each.otherTo];
  }
  return {
    differences: found.map(({ oneFrom, oneTo, otherFrom, otherTo }) => {
      const mine = ones.slice(oneFrom, oneTo);
      const theirs = others.slice(otherFrom, otherTo);
      const times = [...mine.map((item) => downOf(one, item)), ...theirs.map((item) => downOf(other, item))];
      return { one: mine, other: theirs, fromMs: Math.min(...times), toMs: Math.max(...times) };
    }),
    laterMs: laterOf(pairs),
    alike: pairs.length,
  };
}

function outputsOf({ items }: Run): readonly Item[] {
  return items.filter(({ produced }) => produced.kind !== 'modifier');
}

function wordOf({ produced }: Item): string {
  return `${produced.kind} ${producedWord(produced)}`;
}

/** When the press went down that gave it, ms. */
function downOf(run: Run, { cause, t }: Item): number {
  return run.decisions[cause]?.data?.since ?? t;
}

function laterOf(pairs: readonly (readonly [Item, Item])[]): Comparison['laterMs'] {
  if (pairs.length === 0) return null;
  const later = pairs.map(([one, other]) => other.t - one.t);
  const most = later.reduce((far, each) => (Math.abs(each) > Math.abs(far) ? each : far), 0);
  return { mean: later.reduce((sum, each) => sum + each, 0) / later.length, most };
}
