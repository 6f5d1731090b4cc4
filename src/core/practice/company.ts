import { LONGEST_RUN, type RunCounts } from '../needs/counts-runs.ts';

/** Where a character stands: what comes right before it, and how often in the text. */
interface Start {
  readonly before: string;
  readonly count: number;
}

/** A text as drills use it: the company that each character keeps in it. */
export interface Company {
  readonly counts: RunCounts;
  /** By character, the runs that lead up to it, the longest there are. */
  readonly starts: ReadonlyMap<string, readonly Start[]>;
}

/** A character more often alone than so is found by its rows anyway: no more runs are kept for each, the most frequent. */
const MOST_STARTS = 60;

/** Turns the counts round, once a text: costs a pass over them. */
export function companyOf(counts: RunCounts): Company {
  const byLength = new Map<string, Start[][]>();
  for (const [before, followers] of counts.after) {
    const length = [...before].length;
    for (const { char, count } of followers) {
      const lists = byLength.get(char) ?? Array.from({ length: LONGEST_RUN }, () => []);
      byLength.set(char, lists);
      lists[length]?.push({ before, count });
    }
  }
  const starts = new Map<string, readonly Start[]>();
  for (const [char, lists] of byLength) {
    const longest = lists.findLast((list, length) => length > 0 && list.length > 0) ?? [];
    starts.set(char, longest.sort(mostFirst).slice(0, MOST_STARTS));
  }
  return { counts, starts };
}

/** The most frequent first; of equals by code units. */
function mostFirst(one: Start, other: Start): number {
  return other.count - one.count || (one.before < other.before ? -1 : 1);
}

/** How often a character stands in the text. */
export function countOf(company: Company, char: string): number {
  return company.counts.after.get('')?.find((each) => each.char === char)?.count ?? 0;
}

/**
 * A few characters with one of them in the company that it keeps in the text: what leads up to it, itself, and what follows,
 * each drawn as often as it stands there, as far as all of them may be used. Null where the text has no such place. Something
 * always comes before it. random: uniform in [0, 1).
 */
export function drawCompany(
  company: Company,
  char: string,
  mayUse: (char: string) => boolean,
  length: number,
  random: () => number,
): readonly string[] | null {
  const all = company.starts.get(char) ?? [];
  const usable = all.flatMap(({ before, count }) => {
    const chars = usableEnd([...before], mayUse);
    return chars.length === 0 ? [] : [{ chars, count }];
  });
  const start = drawn(usable, random);
  if (start === undefined) return null;
  const chars = [...start.chars, char];
  while (chars.length < length) {
    const next = drawn(followersOf(company.counts, chars, mayUse), random);
    if (next === undefined) break;
    chars.push(next.char);
  }
  return chars.at(-1) === ' ' && char !== ' ' ? chars.slice(0, -1) : chars;
}

/** The end of a run from the last character that may not be used on; it does not begin with a space. */
function usableEnd(chars: readonly string[], mayUse: (char: string) => boolean): readonly string[] {
  const bad = chars.findLastIndex((char) => !mayUse(char));
  const end = chars.slice(bad + 1);
  const first = end.findIndex((char) => char !== ' ');
  return first > 0 && end.length > first ? end.slice(first) : end;
}

/** What follows the longest end of the characters that is in the table. */
function followersOf(counts: RunCounts, chars: readonly string[], mayUse: (char: string) => boolean) {
  for (let size = LONGEST_RUN - 1; size > 0; size--) {
    const usable = counts.after.get(chars.slice(-size).join(''))?.filter(({ char }) => mayUse(char)) ?? [];
    if (usable.length > 0) return usable;
  }
  return [];
}

function drawn<Item extends { readonly count: number }>(
  items: readonly Item[],
  random: () => number,
): Item | undefined {
  let point = random() * items.reduce((sum, { count }) => sum + count, 0);
  return items.find(({ count }) => {
    point -= count;
    return point < 0;
  });
}
