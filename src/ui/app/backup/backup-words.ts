import type { PartPlan, RestorePlan } from '../../../store/keeping/backup/restore.ts';

/** The name of a backup file, by the day on which it is made (ms since 1970). */
export function backupName(now: number): string {
  return `handful-backup-${new Date(now).toISOString().slice(0, 10)}.json`;
}

/** What is said when the file has been handed to the browser; `spared`: what did not fit. */
export function savedWords(spared: readonly string[]): string {
  if (spared.length === 0) return 'The file is among your downloads.';
  return `The file is among your downloads. It would have become too large to be read again, so these are not in it: ${spared.join(', ')}.`;
}

/** How many names a sentence holds. */
const NAMED = 6;

/** What restoring one part does, in a few words: "2 are added (A, B); 1 is here just so". */
export function partWords({ added, both, united, stays, same, invalid }: PartPlan): string {
  const words = [
    ...(added.length === 0 ? [] : [`${are(added.length)} added${namesIn(added)}`]),
    ...(both.length === 0
      ? []
      : [`${differs(both.length)} from here and ${is(both.length)} kept beside it${namesIn(both)}`]),
    ...(united === 0 ? [] : [`${are(united)} made one with those here`]),
    ...(stays === 0 ? [] : [`${differs(stays)} from here: what is here stays`]),
    ...(same === 0 ? [] : [`${are(same)} here just so`]),
    ...(invalid === 0 ? [] : [`${are(invalid)} left out: not to be read`]),
  ];
  return words.join('; ');
}

function are(count: number): string {
  return count === 1 ? '1 is' : `${count} are`;
}

function is(count: number): string {
  return count === 1 ? 'is' : 'are';
}

function differs(count: number): string {
  return count === 1 ? '1 differs' : `${count} differ`;
}

function namesIn(names: readonly string[]): string {
  const known = names.filter((name) => name !== '');
  if (known.length === 0) return '';
  const more = known.length - NAMED;
  return ` (${known.slice(0, NAMED).join(', ')}${more > 0 ? ` and ${more} more` : ''})`;
}

/** Whether restoring would write anything, whatever is chosen. */
export function hasAnything({ parts }: RestorePlan): boolean {
  return parts.some(
    ({ added, both, united, toChoose }) => added.length + both.length + united + toChoose > 0,
  );
}

/** When a backup was made, for its heading; null where the file does not say. */
export function madeWords(madeAt: number): string {
  return madeAt === 0
    ? 'This backup'
    : `The backup of ${new Date(madeAt).toISOString().slice(0, 16).replace('T', ', ')} UTC`;
}
