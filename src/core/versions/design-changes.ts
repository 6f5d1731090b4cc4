import { samePlain } from '../base/same-plain.ts';
import { timingOf } from '../keymap/timing.ts';
import type { Keymap } from '../keymap/types.ts';

/** A part of a design that belongs to no key, layer or chord. */
export type DesignPart = 'name' | 'notes' | 'board name' | 'hosts' | 'timing' | 'diary';

/** What became of the parts that belong to no key, layer or chord. */
export interface DesignChanges {
  /** The parts that differ; timing as it is in force. */
  readonly what: readonly DesignPart[];
  /** Need lists, own needs, and needs let off (`waived: …`), that came and that went. */
  readonly needsAdded: readonly string[];
  readonly needsGone: readonly string[];
}

/** What differs between two designs beside board, layers and chords. */
export function designChanges(before: Keymap, after: Keymap): DesignChanges {
  const parts: readonly (readonly [DesignPart, (keymap: Keymap) => unknown])[] = [
    ['name', ({ name }) => name],
    ['notes', ({ notes }) => notes ?? ''],
    ['board name', ({ board }) => board.name],
    ['hosts', ({ hosts }) => hosts],
    ['timing', (keymap) => timingOf(keymap)],
    ['diary', ({ diary }) => diary ?? []],
  ];
  const [was, is] = [needsOf(before), needsOf(after)];
  return {
    what: parts.filter(([, part]) => !samePlain(part(before), part(after))).map(([what]) => what),
    needsAdded: [...is].filter((need) => !was.has(need)),
    needsGone: [...was].filter((need) => !is.has(need)),
  };
}

function needsOf({ needs }: Keymap): ReadonlySet<string> {
  const { lists = [], own = [], waived = [] } = needs ?? {};
  return new Set([
    ...lists.map((list) => `list ${list}`),
    ...own,
    ...waived.map(({ need }) => `waived: ${need}`),
  ]);
}
