import { type RunCounts, runsOfPairs } from '../../core/needs/counts-runs.ts';
import type { TextCounts } from '../../core/needs/text-counts.ts';
import type { CountedFiles } from '../../workers/count-files.ts';

/** The typist's own text as it is kept with the browser: its counts and never the text itself. */
export interface OwnText {
  /** The name of the folder or file, or how many files there were. */
  readonly name: string;
  /** When it was counted, ms since 1970. */
  readonly countedAt: number;
  readonly files: number;
  readonly counts: TextCounts;
  /** What follows what; of a text that was kept without, pairs alone. */
  readonly runs: RunCounts;
  /** What was left out or read otherwise, in sentences. */
  readonly notes: readonly string[];
}

/** Takes what was stored for a text if it is one; anything else is as good as none. */
export function readOwnText(stored: unknown): OwnText | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const { name, countedAt, files, counts, runs, notes } = stored as Partial<Record<keyof OwnText, unknown>>;
  if (typeof name !== 'string' || typeof countedAt !== 'number' || typeof files !== 'number') return null;
  if (!isCounts(counts) || !Array.isArray(notes)) return null;
  return {
    name,
    countedAt,
    files,
    counts,
    runs: isRuns(runs) ? runs : runsOfPairs(counts),
    notes: notes.filter((note) => typeof note === 'string'),
  };
}

function isRuns(value: unknown): value is RunCounts {
  if (typeof value !== 'object' || value === null) return false;
  const { total, after } = value as Partial<Record<keyof RunCounts, unknown>>;
  return typeof total === 'number' && after instanceof Map;
}

function isCounts(value: unknown): value is TextCounts {
  if (typeof value !== 'object' || value === null) return false;
  const { total, chars, pairs } = value as Partial<Record<keyof TextCounts, unknown>>;
  return typeof total === 'number' && chars instanceof Map && pairs instanceof Map;
}

/** What a count has to say about files that it left out or read otherwise. */
export function notesOf(
  counted: Omit<CountedFiles, 'counts' | 'runs' | 'files'>,
  limits: { readonly moreThanLimit: boolean; readonly mostFiles: number; readonly mostBytes: number },
): readonly string[] {
  const { binaries, otherwiseEncoded, unreadable, beyondLimit } = counted;
  const megabytes = `${Math.round(limits.mostBytes / 1_000_000)} MB`;
  return [
    ...(limits.moreThanLimit
      ? [`Only the first ${limits.mostFiles.toLocaleString('en')} files were taken: that is the limit.`]
      : []),
    ...(beyondLimit > 0 ? [`${beyond(beyondLimit)} beyond the limit of ${megabytes} in all.`] : []),
    ...(binaries > 0 ? [`${filesWere(binaries)} left out: no text.`] : []),
    ...(unreadable > 0 ? [`${filesWere(unreadable)} left out: they could not be read.`] : []),
    ...(otherwiseEncoded > 0 ? [`${filesWere(otherwiseEncoded)} no UTF-8 and read as Windows-1252.`] : []),
  ];
}

const filesWere = (count: number) =>
  count === 1 ? '1 file was' : `${count.toLocaleString('en')} files were`;
const beyond = (count: number) =>
  count === 1 ? '1 file was left out,' : `${count.toLocaleString('en')} files were left out,`;

/** What to call a text: its one folder, its one file, or how many files it has. */
export function nameOfFiles(files: readonly Pick<File, 'name' | 'webkitRelativePath'>[]): string {
  const folders = new Set(files.map(({ webkitRelativePath }) => webkitRelativePath.split('/')[0] ?? ''));
  const [folder = ''] = folders;
  if (folders.size === 1 && folder !== '') return folder;
  const [first] = files;
  return files.length === 1 && first !== undefined
    ? first.name
    : `${files.length.toLocaleString('en')} files`;
}
