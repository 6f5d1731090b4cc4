import type { Verdict } from '../../../core/check/judge.ts';
import type { CheckStep } from '../../../core/check/steps.ts';

/** How far a check has come. */
export interface Tally {
  readonly pressed: number;
  readonly all: number;
  readonly wrong: number;
  readonly silent: number;
}

/** "12 of 180 pressed, 2 wrong". */
export function tallyWords({ pressed, all, wrong, silent }: Tally): string {
  const faults = [wrong > 0 ? `${wrong} wrong` : '', silent > 0 ? `${silent} silent` : ''];
  return [`${pressed} of ${all} pressed`, ...faults.filter((part) => part !== '')].join(', ');
}

/** What the desk is about to ask for, in a line. */
export function planWords(steps: readonly CheckStep[]): string {
  const chords = steps.filter(({ keys }) => keys.length > 1).length;
  const single = steps.length - chords;
  return `${count(single, 'key press', 'key presses')} and ${count(chords, 'chord')} will be asked for, one after the other, by the shortest way over the board.`;
}

/** Why a check stopped by itself. */
export function abandonedWords(many: number): string {
  return `Nothing came of the last ${many} presses, so the check waits for you. They are asked for again; what stays silent then counts as silent.`;
}

export function count(many: number, one: string, more = `${one}s`): string {
  return `${many.toLocaleString('en')} ${many === 1 ? one : more}`;
}

/** What became of the press before. */
export function verdictWords(verdict: Verdict, came: string): string {
  if (verdict === 'right') return 'Right.';
  return verdict === 'silent' ? 'Nothing came.' : `Came: ${came}.`;
}

/** How a verdict is marked beside its colour. */
export const VERDICT_SIGNS: Readonly<Record<Verdict | 'open', string>> = {
  right: '✓',
  wrong: '✗',
  silent: '–',
  open: '·',
};
