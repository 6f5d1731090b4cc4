import { NEED_GROUPS, type NeedGroup } from '../../core/practice/groups.ts';
import type { PracticeInput } from '../../core/practice/session.ts';

/** When hints come onto the board. */
export type HintChoice = 'after-hesitation' | 'when-asked';

/** How the typist wants to practise; theirs, so it is kept with the browser and not with a design. */
export interface PracticeChoices {
  readonly minutes: number;
  readonly input: PracticeInput;
  /** Null for everything. */
  readonly group: NeedGroup | null;
  readonly hints: HintChoice;
}

export const USUAL_CHOICES: PracticeChoices = {
  minutes: 7,
  input: 'engine',
  group: null,
  hints: 'after-hesitation',
};

/** How long a session may be, minutes. */
export const SESSION_MINUTES: readonly number[] = [5, 7, 10];

/** What of a stored value can be used; the rest is as usual. */
export function readChoices(stored: unknown): PracticeChoices {
  if (typeof stored !== 'object' || stored === null) return USUAL_CHOICES;
  const { minutes, input, group, hints } = stored as Partial<Record<keyof PracticeChoices, unknown>>;
  return {
    minutes: SESSION_MINUTES.find((each) => each === minutes) ?? USUAL_CHOICES.minutes,
    input: input === 'board' ? 'board' : 'engine',
    group: NEED_GROUPS.find((each) => each === group) ?? null,
    hints: hints === 'when-asked' ? 'when-asked' : 'after-hesitation',
  };
}
