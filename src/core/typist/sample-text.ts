import { LONGEST_RUN, type RunCounts } from '../needs/counts-runs.ts';

/** Draws one character after the other. */
export type TextSource = () => string;

/** What may follow, with running sums of the counts; what is left of `all` is drawn from the shorter run. */
interface Row {
  readonly chars: readonly string[];
  readonly sums: Float64Array;
  readonly all: number;
  readonly shorter: Row | null;
  /** By the place of the character drawn: the row after it, once it has been looked for. */
  readonly next: (Row | undefined)[];
  readonly before: string;
}

/**
 * Text drawn from counts: each character by the three before it, or by fewer where the longer run is not in the table. Pairs
 * come as often as in the text; words are only word-like. random: uniform in [0, 1).
 */
export function textSource(counts: RunCounts, random: () => number): TextSource {
  const rows = rowsOf(counts);
  const start = rows.get('') ?? NOTHING;
  let row = start;
  return () => {
    const drawn = draw(row, random);
    const { from, at } = drawn;
    const char = from.chars[at] ?? '';
    // Only where the character came from this row itself can the way on be kept with it.
    const known = from === row ? row.next[at] : undefined;
    const next = known ?? after(rows, row.before + char, start);
    if (from === row) row.next[at] = next;
    row = next;
    return char;
  };
}

const NOTHING: Row = { chars: [], sums: new Float64Array(0), all: 0, shorter: null, next: [], before: '' };

/** The row of the longest end of a run that is in the table. */
function after(rows: ReadonlyMap<string, Row>, run: string, start: Row): Row {
  const chars = [...run].slice(1 - LONGEST_RUN);
  for (let from = 0; from < chars.length; from++) {
    const row = rows.get(chars.slice(from).join(''));
    if (row !== undefined) return row;
  }
  return start;
}

function rowsOf({ total, after }: RunCounts): ReadonlyMap<string, Row> {
  const rows = new Map<string, Row>();
  for (const [before, followers] of after) {
    const chars = [...before];
    const sums = new Float64Array(followers.length);
    let sum = 0;
    for (const [at, { count }] of followers.entries()) {
      sum += count;
      sums[at] = sum;
    }
    const last = chars.at(-1);
    const own = after.get(chars.slice(0, -1).join(''))?.find(({ char }) => char === last)?.count;
    const shorter = before === '' ? null : (rows.get(chars.slice(1).join('')) ?? null);
    // Without a shorter run to fall back on, only what is known can follow.
    const all = shorter === null ? sum : Math.max(sum, before === '' ? total : (own ?? sum));
    rows.set(before, { chars: followers.map(({ char }) => char), sums, all, shorter, next: [], before });
  }
  return rows;
}

/** Where in which row the next character lies. */
function draw(row: Row, random: () => number): { readonly from: Row; readonly at: number } {
  for (let from: Row | null = row; from !== null; from = from.shorter) {
    const point = random() * from.all;
    const last = from.sums.length - 1;
    if (point >= (from.sums[last] ?? 0)) continue;
    let low = 0;
    let high = last;
    while (low < high) {
      const middle = (low + high) >> 1;
      if ((from.sums[middle] ?? 0) > point) high = middle;
      else low = middle + 1;
    }
    return { from, at: low };
  }
  return { from: row, at: 0 };
}
