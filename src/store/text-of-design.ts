import { LANGUAGE_LISTS } from '../core/needs/language-lists.ts';
import type { TextChoice } from './make-typist.ts';

/** The ready texts by the language code that begins the names of CLDR's lists ("cldr:pt:letters"). */
const TEXTS: ReadonlyMap<string, TextChoice> = new Map([
  ['en', 'english'],
  ['de', 'german'],
  ['fr', 'french'],
  ['es', 'spanish'],
  ['pt', 'portuguese'],
  ['pl', 'polish'],
]);

const PROGRAMMING: ReadonlySet<string> = new Set(LANGUAGE_LISTS.map(({ name }) => name));

/**
 * The text that is nearest to what a design asks for, by the need lists that it names: that of the first spoken language
 * for which there is one; program code where only programming languages are asked for; else English.
 */
export function textOfLists(lists: readonly string[]): TextChoice {
  const codes = lists.flatMap((list) => /^cldr:([a-z]{2,3})(?![a-z])/.exec(list)?.[1] ?? []);
  const spoken = codes.flatMap((code) => TEXTS.get(code) ?? [])[0];
  if (spoken !== undefined) return spoken;
  return codes.length === 0 && lists.some((list) => PROGRAMMING.has(list)) ? 'code' : 'english';
}
