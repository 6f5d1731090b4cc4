import { fail, ok, type Result } from '../base/result.ts';
import { findJsonFault } from './json-syntax.ts';
import type { ReadProblem } from './problem.ts';

/** The value of a JSON text; a byte order mark before it is passed over. The problem's path is like `line 3, column 7`. */
export function parseJson(text: string): Result<unknown, ReadProblem[]> {
  const json = text.replace(/^\uFEFF/, '');
  try {
    return ok(JSON.parse(json));
  } catch {
    const fault = findJsonFault(json);
    const path = `line ${fault?.line ?? 1}, column ${fault?.column ?? 1}`;
    const { found = 'a text', expected = 'JSON' } = fault ?? {};
    return fail([
      { path, found, expected, sentence: `No JSON: at ${path}, found ${found}, expected ${expected}.` },
    ]);
  }
}
