import type { OwnText } from '../../../../store/own-text/kept-text.ts';
import type { Counting } from '../../../../store/own-text/make-own-text.ts';
import { plain } from './coverage-words.ts';

/** What the own text is, in a sentence. The date is written for `locale`, by default the reader's own. */
export function textWords({ name, counts, files, countedAt }: OwnText, locale?: string): string {
  const inFiles = files === 1 ? 'one file' : `${plain(files)} files`;
  const date = new Date(countedAt).toLocaleDateString(locale, { dateStyle: 'medium' });
  return `${name}: ${plain(counts.total)} characters in ${inFiles}, counted on ${date}`;
}

/** What the counting is at. */
export function countingWords(counting: Counting): string {
  if (counting.state === 'gathering') return 'Looking through the folders…';
  if (counting.state === 'failed') return counting.why;
  if (counting.state === 'idle') return '';
  return `Counting: ${plain(counting.done.files)} of ${plain(counting.files)} files`;
}

/** How much of the counting is done, 0 to 1; null where nobody can know. */
export function countingShare(counting: Counting): number | null {
  if (counting.state !== 'counting') return null;
  return counting.bytes === 0 ? 1 : Math.min(1, counting.done.bytes / counting.bytes);
}
