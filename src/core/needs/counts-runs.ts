import type { TextCounts } from './text-counts.ts';

/** A character and how often it stands there. */
export interface Follower {
  readonly char: string;
  readonly count: number;
}

/**
 * How often each run of one to four characters stands in a text. Characters are code points in NFC; a line break is "\n".
 * A cluster of several code points is no key press of its own kind: it ends a run.
 */
export interface RunCounts {
  /** Characters in all. */
  readonly total: number;
  /** By the zero to three characters before, together: what follows them, the most frequent first. */
  readonly after: ReadonlyMap<string, readonly Follower[]>;
}

/** Takes a text piece by piece; runs across the seam of two pieces count. */
export interface RunCounter {
  add(piece: string): void;
  /** A break between two texts: no run spans it. */
  endText(): void;
  counts(): RunCounts;
}

/** The longest run that is counted. */
export const LONGEST_RUN = 4;

/** What joins the code point before it to a cluster: marks, the joiner, regional indicators, emoji modifiers. */
const MARKS = /\u200d|[\p{M}\u{1F1E6}-\u{1F1FF}\u{1F3FB}-\u{1F3FF}]/u;

/** A counter for a text of any size; memory grows with the number of different runs. */
export function createRunCounter(): RunCounter {
  const runs = new Map<string, number>();
  let waiting: string[] = [];

  function countFrom(at: number): void {
    const run = waiting.slice(at, at + LONGEST_RUN).join('');
    runs.set(run, (runs.get(run) ?? 0) + 1);
  }

  function endRun(): void {
    for (let at = 0; at < waiting.length; at++) countFrom(at);
    waiting = [];
  }

  function put(char: string): void {
    if (MARKS.test(char)) {
      waiting.pop();
      endRun();
      return;
    }
    waiting.push(char);
    // The next code point may be a mark that takes the last one away, so one more is kept than a run needs.
    if (waiting.length <= LONGEST_RUN) return;
    countFrom(0);
    waiting.shift();
  }

  return {
    add(piece) {
      for (const char of piece.normalize('NFC').replace(/\r\n?/g, '\n')) put(char);
    },
    endText: endRun,
    counts() {
      const rest = new Map<string, number>();
      for (let at = 0; at < waiting.length; at++) {
        const run = waiting.slice(at, at + LONGEST_RUN).join('');
        rest.set(run, (rest.get(run) ?? 0) + 1);
      }
      return treeOf([...runs, ...rest]);
    },
  };
}

/** How often a run of one to four characters stands in the text, 0 where it is not in the table. */
export function countOfRun(counts: RunCounts, run: readonly string[]): number {
  const last = run.at(-1);
  const followers = counts.after.get(run.slice(0, -1).join('')) ?? [];
  return followers.find(({ char }) => char === last)?.count ?? 0;
}

/** The runs of one and two characters of a text of which no more is known; clusters of several code points are left out. */
export function runsOfPairs({ total, chars, pairs }: TextCounts): RunCounts {
  const isSingle = (char: string) => [...char].length === 1;
  const row = (counts: ReadonlyMap<string, number>) =>
    followersOf(new Map([...counts].filter(([char, count]) => count > 0 && isSingle(char))));
  const singles = row(chars);
  const after = new Map(singles.length === 0 ? [] : [['', singles]]);
  for (const { char } of singles) {
    const followers = row(pairs.get(char) ?? new Map());
    if (followers.length > 0) after.set(char, followers);
  }
  return { total, after };
}

/**
 * Without the longest runs that stand in the text less than `least` times. What they began with keeps its own count, so
 * pairs and letters stay exact.
 */
export function withoutRareRuns(
  counts: RunCounts,
  least: { readonly triple: number; readonly quadruple: number },
): RunCounts {
  const floors = [0, 0, least.triple, least.quadruple];
  const after = new Map<string, readonly Follower[]>();
  for (const [before, followers] of counts.after) {
    const floor = floors[[...before].length] ?? 0;
    const kept = followers.filter(({ count }) => count >= floor);
    const isKnown = before === '' || isKept(after, before);
    if (kept.length > 0 && isKnown) after.set(before, kept);
  }
  return { total: counts.total, after };
}

function isKept(after: ReadonlyMap<string, readonly Follower[]>, run: string): boolean {
  const chars = [...run];
  const last = chars.pop();
  return after.get(chars.join(''))?.some(({ char }) => char === last) ?? false;
}

function treeOf(runs: readonly (readonly [string, number])[]): RunCounts {
  const tree = new Map<string, Map<string, number>>();
  let total = 0;
  for (const [run, count] of runs) {
    total += count;
    let before = '';
    for (const char of run) {
      const row = tree.get(before) ?? new Map<string, number>();
      tree.set(before, row.set(char, (row.get(char) ?? 0) + count));
      before += char;
    }
  }
  const contexts = [...tree.keys()].sort((one, other) => one.length - other.length || (one < other ? -1 : 1));
  return {
    total,
    after: new Map(contexts.map((before) => [before, followersOf(tree.get(before) ?? new Map())])),
  };
}

/** The most frequent first, of equals in code unit order. */
function followersOf(row: ReadonlyMap<string, number>): Follower[] {
  return [...row]
    .map(([char, count]) => ({ char, count }))
    .sort((one, other) => other.count - one.count || (one.char < other.char ? -1 : 1));
}
