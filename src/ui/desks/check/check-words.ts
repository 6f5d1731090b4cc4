import type { Verdict } from '../../../core/check/judge.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import { codeName } from '../../../core/host/code-names.ts';
import { isCode } from '../../../core/keymap/codes.ts';
import { type Pause, SILENT_IN_A_ROW } from './use-check-run.ts';

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
  const parts = [
    single > 0 ? count(single, 'key press', 'key presses') : '',
    chords > 0 ? count(chords, 'chord') : '',
  ];
  return `Plug in the board that you built, with this design on it. ${parts.filter((part) => part !== '').join(' and ')} will be asked for, one after the other, and the page says what came otherwise.`;
}

/** Why a check waits. */
export function pauseWords(pause: Pause): string {
  switch (pause.why) {
    case 'stopped':
      return 'What was pressed is kept, even if the page is closed.';
    case 'nobody':
      return `Nothing came of the last ${SILENT_IN_A_ROW} presses, so the check waits for you. They are asked for again; what stays silent then counts as silent.`;
    case 'away':
      return 'Another window has the keyboard, so nothing that is pressed comes here and nothing was counted. Come back to this page and go on.';
    case 'stuck': {
      const names = pause.codes.map((code) => (isCode(code) ? codeName(code) : code)).join(' and ');
      return `${names} has not come up again, and would come with everything that follows. Free the key, or press and release it, and go on.`;
    }
  }
}

export function count(many: number, one: string, more = `${one}s`): string {
  return `${many.toLocaleString('en')} ${many === 1 ? one : more}`;
}

/** What became of the press before. */
export function verdictWords(verdict: Verdict, came: string): string {
  if (verdict === 'right') return 'Right.';
  return verdict === 'silent' ? 'Nothing came.' : `Came ${came}.`;
}

/** How a verdict is marked beside its colour. */
export const VERDICT_SIGNS: Readonly<Record<Verdict | 'open', string>> = {
  right: '✓',
  wrong: '✗',
  silent: '–',
  open: '·',
};

/** What is done before, and the press itself as it is asked for: what is held is also to be let go. */
export function splitMoves(moves: readonly string[]): {
  readonly before: readonly string[];
  readonly press: string;
} {
  const at = moves.findLastIndex((move) => !move.startsWith('let '));
  const move = moves[at] ?? '';
  const press = `${move.charAt(0).toUpperCase()}${move.slice(1)}`;
  const before = moves.slice(0, Math.max(0, at));
  return { before, press: move.startsWith('hold ') ? `${press}, then let go` : press };
}

/** The same in one line. */
export function moveWords(moves: readonly string[]): string {
  const { before, press } = splitMoves(moves);
  return before.length === 0 ? press.toLowerCase() : `${before.join(', then ')}, and ${press.toLowerCase()}`;
}
