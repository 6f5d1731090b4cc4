import * as z from 'zod/mini';
import { fail, ok, type Result } from '../base/result.ts';
import { foundText, type Path, type Problem } from './problem.ts';
import { keymapSchema } from './schema.ts';
import type { Keymap } from './types.ts';

type Issue = z.core.$ZodIssue;

/** Checks the shape alone: a copy with the fields in the order of the schema, or what is wrong, field by field. */
export function checkShape(value: unknown): Result<Keymap, readonly Problem[]> {
  const parsed = z.safeParse(keymapSchema, value);
  if (parsed.success) return ok(parsed.data);
  return fail(problemsOfShape(parsed.error.issues, value));
}

/** What a schema objects to in a value, as problems at paths. */
export function problemsOfShape(issues: readonly Issue[], value: unknown): readonly Problem[] {
  return issues.flatMap((issue) => problemsOf(issue, value));
}

function problemsOf(issue: Issue, document: unknown): Problem[] {
  const path = issue.path.map((segment) => (typeof segment === 'symbol' ? String(segment) : segment));
  const value = valueAt(document, path);
  if (issue.code === 'unrecognized_keys') {
    return issue.keys.map((name) => ({
      path: [...path, name],
      found: 'a field of that name',
      expected: 'no such field',
    }));
  }
  const expected = expectedText(issue);
  if (issue.code === 'invalid_key') return [{ path, found: foundText(path.at(-1)), expected }];
  return [{ path, found: foundText(value), expected }];
}

/** What should have stood there, in words. */
function expectedText(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return TYPES[issue.expected] ?? issue.expected;
    case 'too_big':
      return `${boundText('at most', issue.maximum, issue.origin)}`;
    case 'too_small':
      return `${boundText('at least', issue.minimum, issue.origin)}`;
    case 'invalid_value':
      return issue.values.length > 10 ? issue.message : oneOf(issue.values);
    case 'invalid_union':
      return 'options' in issue && Array.isArray(issue.options) ? oneOf(issue.options) : issue.message;
    case 'invalid_key': {
      const [inner] = issue.issues;
      return inner ? expectedText(inner) : issue.message;
    }
    default:
      return issue.message;
  }
}

const TYPES: Readonly<Record<string, string>> = {
  string: 'a text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'an object',
  record: 'an object',
  null: 'null',
};

function boundText(bound: 'at most' | 'at least', limit: number | bigint, origin: string): string {
  const what = origin === 'array' ? (limit === 1 ? 'one item' : `${limit} items`) : String(limit);
  return `${what} ${bound}`;
}

function oneOf(values: readonly unknown[]): string {
  const words = values.map((value) => JSON.stringify(value) ?? String(value));
  const last = words.pop() ?? '';
  return words.length === 0 ? last : `${words.join(', ')} or ${last}`;
}

/** What stands at a path of a value; undefined where the path leads nowhere. */
export function valueAt(document: unknown, path: Path): unknown {
  return path.reduce<unknown>((value, segment) => {
    if (typeof value !== 'object' || value === null) return undefined;
    return Object.getOwnPropertyDescriptor(value, segment)?.value;
  }, document);
}
