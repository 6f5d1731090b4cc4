import type { Keymap } from '../../../core/keymap/types.ts';
import { diagnosisWords } from '../../../core/practice/fault-words.ts';
import type { NeedProgress } from '../../../core/practice/progress.ts';
import type { Session } from '../../../core/practice/session.ts';
import { count, dueWords } from './practise-words.ts';

/** A line of what went wrong: the sentence, and how often. */
export interface FaultLine {
  readonly words: string;
  readonly times: number;
  readonly needs: readonly string[];
}

/** What went wrong in a session, the most frequent first, of equals the first to come. */
export function faultLines(keymap: Keymap, session: Session): readonly FaultLine[] {
  const lines = new Map<string, { words: string; times: number; needs: string[] }>();
  for (const { need, diagnosis } of session.attempts) {
    const [fault] = diagnosis?.faults ?? [];
    if (fault === undefined) continue;
    const [words = ''] = diagnosisWords(keymap, { sure: diagnosis?.sure !== false, faults: [fault] });
    const line = lines.get(words) ?? { words, times: 0, needs: [] };
    line.times++;
    if (!line.needs.includes(need)) line.needs.push(need);
    lines.set(words, line);
  }
  return [...lines.values()].sort((one, other) => other.times - one.times);
}

/** A session in a sentence: "31 presses in 2 min, 2 of them wrong." */
export function sessionWords({ attempts, activeMs }: Session): string {
  const wrong = attempts.filter(({ right }) => !right).length;
  const minutes = Math.max(1, Math.round(activeMs / 60_000));
  const tail = wrong === 0 ? 'all right at once' : `${wrong} wrong at first`;
  return `${count(attempts.length, 'need', 'needs')} typed in ${count(minutes, 'minute', 'minutes')}, ${tail}.`;
}

/** When the needs of a session come again: "tomorrow", with the needs; the soonest first. */
export function plannedLines(
  session: Session,
  progress: ReadonlyMap<string, NeedProgress>,
  now: number,
): readonly { readonly when: string; readonly needs: readonly string[] }[] {
  const needs = [...new Set(session.attempts.map(({ need }) => need))];
  const cards = needs.flatMap((need) => {
    const card = progress.get(need)?.card;
    return card === undefined || card.dueAt === null
      ? []
      : [{ need, card, at: card.again ? now : card.dueAt }];
  });
  const lines = new Map<string, string[]>();
  for (const { need, card } of cards.sort((one, other) => one.at - other.at)) {
    const when = dueWords(card, now);
    lines.set(when, [...(lines.get(when) ?? []), need]);
  }
  return [...lines].map(([when, all]) => ({ when, needs: all }));
}
