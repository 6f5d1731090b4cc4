import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostTable } from '../core/host/host-table.ts';
import type { Keymap } from '../core/keymap/types.ts';
import type { RunCounts } from '../core/needs/counts-runs.ts';
import type { Person } from '../core/typist/person.ts';
import { pressRunsOf } from '../core/typist/press-runs.ts';
import { type ChordSuggestions, type ChordWish, suggestChords } from '../core/typist/suggest-chords.ts';

/** Everything that chords are ranked by; it can be sent to a worker. */
export interface ChordSearch {
  readonly keymap: Keymap;
  /** How the computer reads the keys, corrections included. */
  readonly table: HostTable;
  readonly counts: RunCounts;
  readonly person: Person;
  readonly wish: ChordWish;
}

/** Ranks the sets of keys for a chord. */
export function findChords(
  { keymap, table, counts, person, wish }: ChordSearch,
  tell: (considered: number) => void,
): ChordSuggestions {
  return suggestChords(keymap, pressRunsOf(keymap, hostFromTable(table), counts), person, wish, tell);
}
