import { expose } from 'comlink';
import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostTable } from '../core/host/host-table.ts';
import type { Need } from '../core/keymap/need.ts';
import type { Keymap } from '../core/keymap/types.ts';
import type { RunCounts } from '../core/needs/counts-runs.ts';
import type { Person } from '../core/typist/person.ts';
import { compareTyping, type TypingComparison } from '../core/versions/compare-typing.ts';

/** A design as it can be sent to a worker: its host as a table, corrections included. */
export interface SentDesign {
  readonly keymap: Keymap;
  readonly table: HostTable;
  readonly needs: readonly Need[];
}

/** What the page can ask of the worker. */
export interface Comparing {
  compare(before: SentDesign, after: SentDesign, text: RunCounts, person: Person): TypingComparison;
}

const comparing: Comparing = {
  compare: (before, after, text, person) => compareTyping(typed(before), typed(after), text, person),
};

function typed({ keymap, table, needs }: SentDesign) {
  return { keymap, host: hostFromTable(table), needs };
}

expose(comparing);
