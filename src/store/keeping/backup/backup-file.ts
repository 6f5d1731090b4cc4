import { fail, ok, type Result } from '../../../core/base/result.ts';
import type { BackupPart } from './part.ts';
import { fromPlain, toPlain } from './plain.ts';

/** What a backup holds, by part and by the name under which it is kept. */
export interface Backup {
  /** ms since 1970. */
  readonly madeAt: number;
  readonly parts: ReadonlyMap<string, ReadonlyMap<string, unknown>>;
}

const FORMAT = 'handful-backup';
const VERSION = 1;

/** No larger file is read. */
export const BACKUP_BYTES = 64 * 1024 * 1024;

/** Everything that the parts keep, as the text of a file; without what can be spared where that is too large to be read again. */
export async function backupText(
  parts: readonly BackupPart[],
  now: number,
  mostBytes = BACKUP_BYTES,
): Promise<{ readonly text: string; readonly spared: readonly string[] }> {
  const text = await textOf(parts, now);
  if (bytesOf(text) <= mostBytes) return { text, spared: [] };
  const spared = parts.filter(({ isSpared }) => isSpared === true).map(({ title }) => title);
  return {
    text: await textOf(
      parts.filter(({ isSpared }) => isSpared !== true),
      now,
    ),
    spared,
  };
}

function bytesOf(text: string): number {
  return new TextEncoder().encode(text).byteLength;
}

async function textOf(parts: readonly BackupPart[], now: number): Promise<string> {
  const written = await Promise.all(
    parts.map(async ({ id, values, holds = () => true }) => {
      const names = (await values.names()).filter(holds).toSorted();
      const entries = await Promise.all(names.map(async (name) => [name, toPlain(await values.get(name))]));
      return [id, entries] as const;
    }),
  );
  const madeAt = new Date(now).toISOString();
  return `${JSON.stringify({ format: FORMAT, version: VERSION, madeAt, parts: Object.fromEntries(written) })}\n`;
}

/** Reads a backup from a file; its size is looked at before a byte of it. The problem is a sentence. */
export async function readBackupFile(file: Pick<Blob, 'size' | 'text'>): Promise<Result<Backup, string>> {
  if (file.size > BACKUP_BYTES) {
    return fail(`The file holds ${mib(file.size)} MiB; ${mib(BACKUP_BYTES)} MiB at most can be read.`);
  }
  return readBackup(await file.text());
}

/** Reads a backup from the text of a file. The problem is a sentence that says what was found and what was expected. */
export function readBackup(text: string): Result<Backup, string> {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return fail('The file is no JSON; expected a backup file that this page has written.');
  }
  if (!isObject(value) || value.format !== FORMAT) {
    const found =
      isObject(value) && typeof value.format === 'string'
        ? `a file of the format “${value.format}”`
        : 'something else';
    return fail(`Found ${found}; expected a backup file that this page has written.`);
  }
  if (value.version !== VERSION) {
    return fail(
      `Found version ${String(value.version)} of backup files; this page reads version ${VERSION}.`,
    );
  }
  if (!isObject(value.parts)) return fail('The backup has no parts: found nothing to restore.');
  const madeAt = typeof value.madeAt === 'string' ? Date.parse(value.madeAt) : Number.NaN;
  try {
    const parts = Object.entries(value.parts).map(([id, entries]) => [id, entriesOf(entries)] as const);
    return ok({ madeAt: Number.isNaN(madeAt) ? 0 : madeAt, parts: new Map(parts) });
  } catch (error) {
    const why =
      error instanceof RangeError
        ? 'it is nested too deeply'
        : error instanceof Error
          ? error.message
          : String(error);
    return fail(`The backup is damaged: ${why}.`);
  }
}

function entriesOf(entries: unknown): ReadonlyMap<string, unknown> {
  if (!Array.isArray(entries)) throw new Error('found no list of what a part keeps');
  return new Map(
    entries.map((entry: unknown): [string, unknown] => {
      const [name, value]: readonly unknown[] = Array.isArray(entry) ? entry : [];
      if (typeof name !== 'string') throw new Error('found something without a name');
      return [name, fromPlain(value)];
    }),
  );
}

function mib(bytes: number): string {
  return (bytes / 1024 / 1024).toFixed(bytes % (1024 * 1024) === 0 ? 0 : 1);
}

function isObject(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
