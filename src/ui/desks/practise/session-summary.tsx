import { useMemo } from 'react';
import type { Session } from '../../../core/practice/session.ts';
import { usePractice } from '../../../store/practice/practice.ts';
import styles from './practise.module.css';
import { signOf, untypedWords, waitingWords } from './practise-words.ts';
import { faultLines, plannedLines, sessionWords } from './summary.ts';
import type { Room } from './use-room.ts';

/** What stands there before the first session of the day. */
export function Welcome({ room }: { readonly room: Room }) {
  const group = usePractice((state) => state.choices.group);
  const untyped = room.ranked.length === 0 ? null : untypedWords(room.untyped);
  const moved = room.ranked.filter(({ standing }) => standing === 'changed').length;
  return (
    <>
      <h2>{room.ranked.length === 0 ? 'Nothing to practise yet' : 'A few minutes of this design'}</h2>
      <p>{waitingWords(room.ranked, group)}</p>
      {untyped !== null && <p className={styles.quiet}>{untyped}</p>}
      {moved > 0 && (
        <p className={styles.quiet}>
          What the design has moved comes first, to be relearnt: each need on the list says where it was and
          is. What was learnt of the rest is kept.
        </p>
      )}
    </>
  );
}

const MOST_LINES = 4;

/** What a session came to: how it went, what went wrong, when it comes again. */
export function SessionSummary({ room, session }: { readonly room: Room; readonly session: Session }) {
  const { keymap, host, progress } = room;
  const faults = useMemo(() => faultLines(keymap, session), [keymap, session]);
  const planned = useMemo(() => plannedLines(session, progress, Date.now()), [session, progress]);
  const signs = (needs: readonly string[]) =>
    needs.map((need) => signOf(need, keymap, host).glyph).join('  ');
  return (
    <>
      <h2>Done</h2>
      <p>{sessionWords(session)}</p>
      <div className={styles.columns}>
        {faults.length > 0 && (
          <div>
            <h3 className={styles.small}>What went wrong</h3>
            <ul>
              {faults.slice(0, MOST_LINES).map(({ words, times, needs }) => (
                <li key={words}>
                  <b>{signs(needs)}</b> {words}
                  {times > 1 && <span className={styles.quiet}> {times} times</span>}
                </li>
              ))}
            </ul>
          </div>
        )}
        <div>
          <h3 className={styles.small}>Comes again</h3>
          <ul>
            {planned.slice(0, MOST_LINES).map(({ when, needs }) => (
              <li key={when}>
                {when}: <b>{signs(needs.slice(0, 12))}</b>
                {needs.length > 12 && <span className={styles.quiet}> and {needs.length - 12} more</span>}
              </li>
            ))}
          </ul>
        </div>
      </div>
    </>
  );
}
