import { type Need, needText, parseNeed } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import type { NeedList } from './need-list.ts';
import { needListNamed } from './need-lists.ts';

/** Finds a list by its name; those that are loaded on demand are known once they are there. */
export type FindList = (name: string) => NeedList | undefined;

/** A need of a design and the lists that ask for it; no list: the design's own. */
interface SourcedNeed {
  readonly need: Need;
  readonly from: readonly string[];
}

/** What a design says that its typist must type. */
export interface NeedsOfKeymap {
  /** List by list, then the own needs, without doubles and without those let off. */
  readonly needs: readonly SourcedNeed[];
  /** Names of lists that are not known. */
  readonly unknownLists: readonly string[];
}

/** The needs of a design with where each comes from. A design that says nothing has none. */
export function sourcedNeedsOf(keymap: Keymap, findList: FindList = needListNamed): NeedsOfKeymap {
  const waived = new Set(keymap.needs?.waived.map(({ need }) => asWritten(need)));
  const found = new Map<string, { need: Need; from: string[] }>();
  const unknownLists: string[] = [];
  for (const name of new Set(keymap.needs?.lists)) {
    const list = findList(name);
    if (list === undefined) unknownLists.push(name);
    for (const need of list?.needs ?? []) entryOf(found, need).from.push(name);
  }
  for (const text of keymap.needs?.own ?? []) {
    const read = parseNeed(text);
    if (read.ok) entryOf(found, read.value);
  }
  const needs = [...found].filter(([text]) => !waived.has(text)).map(([, entry]) => entry);
  return { needs, unknownLists };
}

/** A need in its one spelling: modifiers in their order, characters in NFC. */
function asWritten(text: string): string {
  const read = parseNeed(text);
  return read.ok ? needText(read.value) : text;
}

function entryOf(found: Map<string, { need: Need; from: string[] }>, need: Need) {
  const text = needText(need);
  const known = found.get(text);
  if (known !== undefined) return known;
  const entry = { need, from: [] };
  found.set(text, entry);
  return entry;
}

/** The needs of a design alone, in order; see `sourcedNeedsOf`. */
export function needsOfKeymap(keymap: Keymap, findList: FindList = needListNamed): readonly Need[] {
  return sourcedNeedsOf(keymap, findList).needs.map(({ need }) => need);
}
