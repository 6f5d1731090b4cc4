import { writeFileSync } from 'node:fs';
import { fail, ok, type Result } from '../core/base/result.ts';
import { absolute, reasonOf } from './read-text.ts';

/** Writes a UTF-8 file, over one that is there. The problem is a sentence that names the file. */
export function writeText(file: string, text: string): Result<null, string> {
  try {
    writeFileSync(absolute(file), text);
    return ok(null);
  } catch (error) {
    return fail(`${file} could not be written: ${reasonOf(error)}.`);
  }
}
