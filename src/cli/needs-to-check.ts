import { basename } from 'node:path';
import { fail, ok, type Result } from '../core/base/result.ts';
import { LIMITS } from '../core/keymap/limits.ts';
import type { Need } from '../core/keymap/need.ts';
import type { Keymap } from '../core/keymap/types.ts';
import { distinctNeeds, type NeedList } from '../core/needs/need-list.ts';
import { NEED_LISTS } from '../core/needs/need-lists.ts';
import { needsOfKeymap } from '../core/needs/needs-of.ts';
import { parseNeedList } from '../core/needs/parse-need-list.ts';
import { findList } from './find-list.ts';
import { isFile, readText } from './read-text.ts';

/** Where a design asks for nothing, it is held against this list. */
const WITHOUT_NEEDS = 'ascii';

/**
 * The needs to look at: the lists and files that are named, else the design's own less those let off (a list that is
 * not known is left to the validator, which says so), else `ascii`. The problem is a sentence for each name, file or line that could not be read.
 */
export function needsToCheck(keymap: Keymap, named: readonly string[]): Result<readonly Need[], string> {
  if (named.length > 0) return fromNames(named);
  const { lists = [], own = [] } = keymap.needs ?? {};
  if (lists.length === 0 && own.length === 0) return fromNames([WITHOUT_NEEDS]);
  return ok(needsOfKeymap(keymap, findList));
}

function fromNames(names: readonly string[]): Result<readonly Need[], string> {
  const lists = names.map(listOf);
  const problems = lists.flatMap((list) => (list.ok ? [] : [list.problem]));
  if (problems.length > 0) return fail(problems.join('\n'));
  return ok(distinctNeeds(lists.flatMap((list) => (list.ok ? list.value.needs : []))));
}

/** A built-in list by its name, else a file. */
function listOf(name: string): Result<NeedList, string> {
  const builtIn = findList(name);
  if (builtIn !== undefined) return ok(builtIn);
  const known = NEED_LISTS.map((list) => list.name).join(', ');
  if (!isFile(name))
    return fail(
      `--needs: no file by that name, and no need list is called ${JSON.stringify(name)}; there are ${known}, and cldr:xx for the language xx.`,
    );
  const text = readText(name, LIMITS.fileBytes);
  if (!text.ok) return text;
  const list = parseNeedList(text.value, basename(name));
  return list.ok ? list : fail(list.problem.map((problem) => `${name}: ${problem}`).join('\n'));
}
