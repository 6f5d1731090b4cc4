import type { MadeFrom } from '../keymap/types.ts';
import { type Half, homeRows } from './parametric.ts';
import { tidy } from './point.ts';

/** One column of a half in parameters. */
export type Column = MadeFrom['columns'][number];

/** The columns with one more at an end, like the one that was there but no home of a finger; eight at most. */
export function withColumn(columns: readonly Column[], end: 'inner' | 'outer'): readonly Column[] {
  const model = end === 'inner' ? columns[0] : columns.at(-1);
  if (model === undefined || columns.length >= 8) return columns;
  const more = { ...model, homeRow: null };
  return end === 'inner' ? [more, ...columns] : [...columns, more];
}

/** The columns without one of them, one at least; a finger that lost its home takes its nearest other column's row. */
export function withoutColumn(half: Half, index: number): readonly Column[] {
  const gone = half.columns[index];
  const left = half.columns.filter((_, at) => at !== index);
  if (gone === undefined || left.length === 0) return half.columns;
  const heir = heirOf(left, gone, index);
  const row = homeRows(half)[heir < index ? heir : heir + 1] ?? 0;
  return left.map((column, at) => (at === heir ? { ...column, homeRow: row } : column));
}

/** The column of the same finger that is next to the one that went, if the finger has no home any more; else −1. */
function heirOf(left: readonly Column[], gone: Column, index: number): number {
  const same = left.flatMap((column, at) => (column.finger === gone.finger ? [at] : []));
  if (gone.homeRow === null || same.some((at) => left[at]?.homeRow !== null)) return -1;
  return same.sort((one, other) => Math.abs(one - index + 0.5) - Math.abs(other - index + 0.5))[0] ?? -1;
}

/** How many keys a column has away from the typist and towards them, from the one in the home row. */
export function rowsOf(half: Half, index: number): { readonly above: number; readonly below: number } {
  const above = homeRows(half)[index] ?? 0;
  return { above, below: (half.columns[index]?.keys ?? 1) - 1 - above };
}

/** A column with so many keys above and below the home row, which stays where it is. */
export function withRows(
  half: Half,
  index: number,
  rows: { above: number; below: number },
): Column | undefined {
  const column = half.columns[index];
  if (column === undefined) return undefined;
  const keys = Math.min(6, rows.above + rows.below + 1);
  const before = (homeRows(half)[index] ?? 0) - (column.keys - 1) / 2;
  const after = rows.above - (keys - 1) / 2;
  // The keys lie along the column, which leans; stagger moves it straight towards the typist.
  const down = (before - after) * half.pitchYMm * Math.cos((column.splayDeg * Math.PI) / 180);
  const staggerMm = tidy(Math.min(Math.max(column.staggerMm + down, -60), 60));
  return { ...column, keys, homeRow: column.homeRow === null ? null : rows.above, staggerMm };
}
