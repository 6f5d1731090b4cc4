import { fail, type Result } from '../../core/base/result.ts';
import { LIMITS } from '../../core/keymap/limits.ts';
import type { ReadProblem } from '../../core/keymap/problem.ts';
import { readKeymap } from '../../core/keymap/read.ts';
import type { Keymap } from '../../core/keymap/types.ts';

/** Why nothing was imported, and from where it was to come. */
export interface ImportProblem {
  /** The file's name, or words such as "the pasted text". */
  readonly source: string;
  readonly problems: readonly ReadProblem[];
}

const MIB = 1024 * 1024;

/** Reads a file as a keymap. Its size is looked at before a byte of it is read. */
export async function readImportedFile(
  file: Pick<Blob, 'size' | 'arrayBuffer'>,
  source: string,
): Promise<Result<Keymap, ImportProblem>> {
  if (file.size > LIMITS.fileBytes) {
    return refused(source, {
      found: `a file of ${(file.size / MIB).toFixed(1)} MiB`,
      expected: `${LIMITS.fileBytes / MIB} MiB at most`,
    });
  }
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(await file.arrayBuffer());
    return readImportedText(text, source);
  } catch {
    return refused(source, { found: 'bytes that are no text in UTF-8', expected: 'a JSON file in UTF-8' });
  }
}

/** Reads a text, pasted or dropped, as a keymap. */
export function readImportedText(text: string, source: string): Result<Keymap, ImportProblem> {
  const read = readKeymap(text);
  return read.ok ? read : fail({ source, problems: read.problem });
}

function refused(source: string, { found, expected }: { found: string; expected: string }) {
  const sentence = `The file holds ${found}; expected ${expected}.`;
  return fail({ source, problems: [{ path: '', found, expected, sentence }] });
}
