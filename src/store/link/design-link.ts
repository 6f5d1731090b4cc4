import { fail, ok, type Result } from '../../core/base/result.ts';
import { LIMITS } from '../../core/keymap/limits.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { writeKeymap } from '../../core/keymap/write.ts';
import { fragmentOf, type LinkProblem, packedOf } from '../../core/link/fragment.ts';
import { type ImportProblem, readImportedText } from '../keeping/read-import.ts';
import { pack, type UnpackFault, unpackText } from './pack.ts';

const SOURCE = 'The link';

/** The fragment that carries a whole design; it reads back equal. A problem, in a sentence, where it would be too long. */
export async function fragmentOfDesign(keymap: Keymap): Promise<Result<string, string>> {
  // One line of it is a fifth shorter once packed than the file that is written for people.
  const text = JSON.stringify(JSON.parse(writeKeymap(keymap)));
  const fragment = fragmentOf(await pack(text));
  if (fragment.ok) return fragment;
  const { found, expected } = fragment.problem;
  return fail(`This design makes ${found}; ${expected} can be passed on. Export it as a file instead.`);
}

/**
 * The design that a fragment of an address carries; null where it does not claim to carry one. What is broken, too long
 * or would grow beyond the size of a file is told as an import's problem is.
 */
export async function designOfFragment(fragment: string): Promise<Result<Keymap, ImportProblem> | null> {
  const packed = packedOf(fragment);
  if (packed === null) return null;
  if (!packed.ok) return refused(packed.problem);
  const text = await unpackText(packed.value, LIMITS.fileBytes);
  if (!text.ok) return refused(FAULTS[text.problem]);
  const read = readImportedText(text.value, SOURCE);
  return read.ok ? ok(read.value) : read;
}

const FAULTS: Readonly<Record<UnpackFault, LinkProblem>> = {
  damaged: { found: 'a design that is not whole', expected: 'the whole address, as it was copied' },
  'too large': {
    found: `a design that grows beyond ${LIMITS.fileBytes / 1024 / 1024} MiB`,
    expected: `${LIMITS.fileBytes / 1024 / 1024} MiB at most`,
  },
  'no text': { found: 'bytes that are no text', expected: 'a neutral keymap in UTF-8' },
};

function refused({ found, expected }: LinkProblem): Result<never, ImportProblem> {
  const sentence = `${SOURCE} holds ${found}; expected ${expected}.`;
  return fail({ source: SOURCE, problems: [{ path: '', found, expected, sentence }] });
}
