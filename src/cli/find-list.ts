import { join } from 'node:path';
import { languageFile, languageLists, readLanguageTable } from '../core/needs/language-table.ts';
import type { NeedList } from '../core/needs/need-list.ts';
import { needListNamed } from '../core/needs/need-lists.ts';
import { publicFolder } from './public-folder.ts';
import { readJson } from './read-text.ts';

const TABLE_BYTES = 1024 * 1024;

/** A need list by its name: built in, or of a language (`cldr:pl`) from the tables that come with the project. */
export function findList(name: string): NeedList | undefined {
  const file = languageFile(name);
  if (file === undefined) return needListNamed(name);
  const json = readJson(join(publicFolder(), 'needs', file), TABLE_BYTES);
  const table = json.ok ? readLanguageTable(json.value) : json;
  return table.ok ? languageLists(table.value).find((list) => list.name === name) : undefined;
}
