import { fail, ok, type Result } from '../base/result.ts';
import { LIMITS } from './limits.ts';
import { migrate } from './migrate.ts';
import { withCharsInNfc } from './nfc.ts';
import { parseJson } from './parse-json.ts';
import { type Problem, type ReadProblem, readProblem } from './problem.ts';
import { ruleProblems } from './reader-rules.ts';
import { checkShape } from './shape-problems.ts';
import { untame } from './tame.ts';
import type { Keymap } from './types.ts';
import { validityProblems } from './validity.ts';

/** More problems than a person reads; a broken file may have thousands. */
const MOST_PROBLEMS = 100;

/**
 * Reads a keymap from the text of a file: size, JSON, format and version, shape, references, in that order; the
 * problems are those of the first of these that fails, 100 at most, in document order of the schema. The keymap is
 * as it was written (fields that are absent stay absent), but for its characters, which are in NFC. A byte order
 * mark at the start is passed over. For a fault in the JSON, `path` is like `line 3, column 7`.
 */
export function readKeymap(text: string): Result<Keymap, ReadProblem[]> {
  if (largerThan(text, LIMITS.fileBytes)) {
    const expected = `${LIMITS.fileBytes / 1024 / 1024} MiB (${LIMITS.fileBytes} bytes) at most`;
    return failAs([{ path: [], found: 'a larger text', expected }]);
  }
  const parsed = parseJson(text);
  return parsed.ok ? checkKeymap(parsed.value) : parsed;
}

/** Reads a keymap from a value, as JSON gives it; for the rest see `readKeymap`. */
export function checkKeymap(value: unknown): Result<Keymap, ReadProblem[]> {
  const document = migrate(value);
  if (!document.ok) return failAs([document.problem]);
  const problem = untame(document.value);
  if (problem) return failAs([problem]);
  const shaped = checkShape(document.value);
  if (!shaped.ok) return failAs(shaped.problem);
  const keymap = withCharsInNfc(shaped.value);
  // A few characters grow under NFC, so that one at the limit may pass it.
  const problems = keymap === shaped.value ? ruleProblems(keymap) : validityProblems(keymap);
  return problems.length > 0 ? failAs(problems) : ok(keymap);
}

function failAs(problems: readonly Problem[]): Result<never, ReadProblem[]> {
  return fail(problems.slice(0, MOST_PROBLEMS).map(readProblem));
}

/** Whether a text has more than so many bytes in UTF-8; a lone surrogate counts as three. */
function largerThan(text: string, bytes: number): boolean {
  if (text.length > bytes) return true;
  if (text.length * 3 <= bytes) return false;
  let sum = 0;
  for (const sign of text) {
    const point = sign.codePointAt(0) ?? 0;
    sum += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
  }
  return sum > bytes;
}
