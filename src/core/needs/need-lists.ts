import { CHARACTER_LISTS } from './character-lists.ts';
import { KEY_LISTS } from './key-lists.ts';
import { LANGUAGE_LISTS } from './language-lists.ts';
import type { NeedList } from './need-list.ts';
import { SHORTCUT_LISTS } from './shortcut-lists.ts';

/** The built-in lists, in the order in which they are offered. Those of spoken languages are loaded on demand. */
export const NEED_LISTS: readonly NeedList[] = [
  ...CHARACTER_LISTS.filter(({ name }) => name === 'ascii'),
  ...KEY_LISTS,
  ...SHORTCUT_LISTS,
  ...CHARACTER_LISTS.filter(({ name }) => name !== 'ascii'),
  ...LANGUAGE_LISTS,
];

const byName: ReadonlyMap<string, NeedList> = new Map(NEED_LISTS.map((list) => [list.name, list]));

/** The built-in list of that name. */
export function needListNamed(name: string): NeedList | undefined {
  return byName.get(name);
}
