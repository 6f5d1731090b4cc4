import { createRunCounter, type RunCounts, withoutRareRuns } from '../core/needs/counts-runs.ts';
import { createTextCounter, type TextCounts } from '../core/needs/text-counts.ts';

/** What of a file is needed to count it: a browser's File is one. */
export interface ReadableFile {
  readonly size: number;
  stream(): ReadableStream<Uint8Array<ArrayBuffer>>;
}

/** How far the counting has come. */
export interface CountProgress {
  readonly files: number;
  readonly bytes: number;
}

/** What was counted, and what was not. */
export interface CountedFiles {
  readonly counts: TextCounts;
  /** Runs of up to four characters: of a long text in a part of every piece, about `RUN_CHARACTERS` in all, the rarest long ones left out. */
  readonly runs: RunCounts;
  /** Files that were counted. */
  readonly files: number;
  /** Files that hold no text: there is a NUL at their beginning. */
  readonly binaries: number;
  /** Files that are no UTF-8 and were read as Windows-1252. */
  readonly otherwiseEncoded: number;
  /** Files that could not be read. */
  readonly unreadable: number;
  /** Files left out because all together would be more than the limit. */
  readonly beyondLimit: number;
}

/** How much is read in all: more says little that is new. */
export const TEXT_BYTES = 100_000_000;

/** In about how many characters runs are counted: what follows what is known well by then, and it takes long. */
const RUN_CHARACTERS = 600_000;
/** Longer runs that stand less often in so long a text say nothing. */
const LEAST_RUNS = { triple: 2, quadruple: 3 };

/** Bytes at the beginning of a file in which a NUL says that it is no text: common practice, no source. */
const LOOKED_AT = 8000;
/** Progress is told when so much has been read since, in bytes or files. */
const TELL_BYTES = 500_000;
const TELL_FILES = 100;

/**
 * Counts the characters of text files, one after the other in chunks. A file that would lead beyond `mostBytes` is left out,
 * smaller ones after it are not. No pair of characters spans two files.
 */
export async function countFiles(
  files: readonly ReadableFile[],
  tell: (progress: CountProgress) => void,
  mostBytes = TEXT_BYTES,
): Promise<CountedFiles> {
  const counter = createTextCounter();
  const runs = createRunCounter();
  const all = Math.min(
    mostBytes,
    files.reduce((sum, { size }) => sum + size, 0),
  );
  const share = Math.min(1, RUN_CHARACTERS / Math.max(1, all));
  const add = (piece: string) => {
    counter.add(piece);
    runs.add(beginningOf(piece, share));
    if (share < 1) runs.endText();
  };
  const found = { text: 0, binary: 0, other: 0, unreadable: 0, beyond: 0 };
  let bytes = 0;
  let told: CountProgress = { files: 0, bytes: 0 };
  for (const [at, file] of files.entries()) {
    if (bytes + file.size > mostBytes) {
      found.beyond += 1;
      continue;
    }
    const kind = await countFile(file, add).catch(() => 'unreadable' as const);
    counter.endText();
    runs.endText();
    found[kind] += 1;
    bytes += file.size;
    if (bytes - told.bytes < TELL_BYTES && at - told.files < TELL_FILES) continue;
    told = { files: at + 1, bytes };
    tell(told);
  }
  tell({ files: files.length, bytes });
  return {
    counts: counter.counts(),
    runs: share < 1 ? withoutRareRuns(runs.counts(), LEAST_RUNS) : runs.counts(),
    files: found.text + found.other,
    binaries: found.binary,
    otherwiseEncoded: found.other,
    unreadable: found.unreadable,
    beyondLimit: found.beyond,
  };
}

/** A share of a piece from its beginning, no character cut in two. */
function beginningOf(piece: string, share: number): string {
  if (share === 1) return piece;
  const end = Math.ceil(piece.length * share);
  const last = piece.charCodeAt(end - 1);
  return piece.slice(0, last >= 0xd800 && last < 0xdc00 ? end - 1 : end);
}

async function countFile(
  file: ReadableFile,
  add: (piece: string) => void,
): Promise<'text' | 'other' | 'binary'> {
  const reader = file.stream().getReader();
  let decoder: TextDecoder | null = null;
  for (;;) {
    const { done, value } = await reader.read();
    if (done) break;
    if (decoder === null) {
      if (value.subarray(0, LOOKED_AT).includes(0)) {
        await reader.cancel();
        return 'binary';
      }
      decoder = new TextDecoder(isUtf8(value) ? 'utf-8' : 'windows-1252');
    }
    add(decoder.decode(value, { stream: true }));
  }
  add(decoder?.decode() ?? '');
  return decoder?.encoding === 'windows-1252' ? 'other' : 'text';
}

/** Whether the beginning of a file is UTF-8; its last character may be cut off. */
function isUtf8(bytes: Uint8Array): boolean {
  try {
    new TextDecoder('utf-8', { fatal: true }).decode(bytes, { stream: true });
    return true;
  } catch {
    return false;
  }
}
