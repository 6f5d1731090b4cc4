import { readFileSync, statSync } from 'node:fs';
import { resolve } from 'node:path';
import { fail, ok, type Result } from '../core/base/result.ts';

/** A file name as the caller meant it: npm runs commands in the project's folder and keeps the caller's in INIT_CWD. */
export function absolute(file: string): string {
  const viaNpm = process.env.npm_lifecycle_event === 'handful' ? process.env.INIT_CWD : undefined;
  return resolve(viaNpm ?? process.cwd(), file);
}

/** Whether a name is that of a file that is there. */
export function isFile(file: string): boolean {
  return statSync(absolute(file), { throwIfNoEntry: false })?.isFile() === true;
}

/** The text of a UTF-8 file of at most `limit` bytes. The problem is a sentence that names the file. */
export function readText(file: string, limit: number): Result<string, string> {
  try {
    const stat = statSync(absolute(file));
    if (stat.isDirectory()) return fail(`${file} is a folder, not a file.`);
    if (stat.size > limit) return fail(`${file} has ${stat.size} bytes; ${limit} at most can be read.`);
    return ok(new TextDecoder('utf-8', { fatal: true }).decode(readFileSync(absolute(file))));
  } catch (error) {
    return fail(`${file} could not be read: ${reasonOf(error)}.`);
  }
}

/** Why the file system refused, as the end of a sentence. */
export function reasonOf(error: unknown): string {
  if (error instanceof TypeError) return 'it is not UTF-8 text';
  const code = error instanceof Error && 'code' in error ? error.code : undefined;
  if (code === 'ENOENT') return 'there is no such file';
  if (code === 'EACCES') return 'reading it is not permitted';
  return error instanceof Error ? error.message : String(error);
}

/** A UTF-8 file as JSON. The problem is a sentence that names the file. */
export function readJson(file: string, limit: number): Result<unknown, string> {
  const text = readText(file, limit);
  if (!text.ok) return text;
  try {
    return ok(JSON.parse(text.value) as unknown);
  } catch (error) {
    return fail(`${file} is not JSON: ${error instanceof Error ? error.message : String(error)}.`);
  }
}
