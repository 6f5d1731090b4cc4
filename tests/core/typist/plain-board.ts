import { readFileSync } from 'node:fs';
import { usHost } from '../../../src/core/host/us.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { readCountsTable } from '../../../src/core/needs/counts-table.ts';
import { type PressRuns, pressRunsOf } from '../../../src/core/typist/press-runs.ts';

export { board36, chordOver, keyOf, plainKeymap } from './plain-keymap.ts';

/** The ready counts of a text. */
export function readyCounts(name: string) {
  const read = readCountsTable(JSON.parse(readFileSync(`public/texts/${name}.json`, 'utf8')));
  if (!read.ok) throw new Error(read.problem);
  return read.value.counts;
}

export const english = readyCounts('english');

/** The English text on a design. */
export function englishOn(keymap: Keymap): PressRuns {
  return pressRunsOf(keymap, usHost, english);
}
