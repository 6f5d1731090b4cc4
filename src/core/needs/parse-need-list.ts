import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import { LIMITS } from '../keymap/limits.ts';
import { type Need, parseNeed } from '../keymap/need.ts';
import { foundText, pathText } from '../keymap/problem.ts';
import { valueAt } from '../keymap/shape-problems.ts';
import { distinctNeeds, type NeedList } from './need-list.ts';

/** The words are what was expected, for the sentence of a refusal. */
const jsonList = z.object({
  name: z.string('a text'),
  needs: z.array(z.string('a need as a text'), 'a list of needs'),
});

/**
 * Reads a need list of the typist's own: one need a line (a line of one space is the space, blank lines are skipped),
 * or JSON `{ name, needs }`. `name` is for a list that states none. The problems are sentences with line or place.
 */
export function parseNeedList(text: string, name: string): Result<NeedList, readonly string[]> {
  const plain = text.replace(/^\ufeff/, '');
  // A lone brace is a need, so a list is JSON only if it names the field.
  const isJson = plain.trimStart().startsWith('{') && /"needs"\s*:/.test(plain);
  return isJson ? parseJsonList(plain) : parsePlainList(plain, name);
}

function parsePlainList(text: string, name: string): Result<NeedList, readonly string[]> {
  const written: Written[] = [];
  for (const [at, line] of text.split(/\r\n|\n|\r/).entries()) {
    const need = line === ' ' ? line : line.replace(/^[ \t]+|[ \t]+$/g, '');
    if (need !== '') written.push({ where: `line ${at + 1}`, text: need });
  }
  return listOf(name, written);
}

function parseJsonList(text: string): Result<NeedList, readonly string[]> {
  let json: unknown;
  try {
    json = JSON.parse(text);
  } catch (error) {
    return fail([`the list is no JSON: ${error instanceof Error ? error.message : String(error)}`]);
  }
  const read = jsonList.safeParse(json);
  if (!read.success) {
    return fail(
      read.error.issues.map(({ path, message }) => {
        const way = path.map((segment) => (typeof segment === 'symbol' ? String(segment) : segment));
        return `${pathText(way)}: found ${foundText(valueAt(json, way))}, expected ${message}`;
      }),
    );
  }
  const written = read.data.needs.map((need, at) => ({ where: `needs[${at}]`, text: need }));
  return listOf(read.data.name, written);
}

/** A need as it was written, and where. */
interface Written {
  readonly where: string;
  readonly text: string;
}

function listOf(name: string, written: readonly Written[]): Result<NeedList, readonly string[]> {
  if (written.length > LIMITS.needs) {
    return fail([`found ${written.length} needs, expected ${LIMITS.needs} at most`]);
  }
  const needs: Need[] = [];
  const problems: string[] = [];
  for (const { where, text } of written) {
    const read = parseNeed(text);
    if (read.ok) needs.push(read.value);
    else problems.push(`${where}: ${read.problem}`);
  }
  if (problems.length > 0) return fail(problems);
  return ok({ name, title: name, description: 'A list of your own.', needs: distinctNeeds(needs) });
}
