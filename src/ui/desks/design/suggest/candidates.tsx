import { type KeyboardEvent, useEffect, useId, useRef } from 'react';
import type { Board } from '../../../../core/keymap/types.ts';
import { LitBoard } from './lit-board.tsx';
import styles from './suggest.module.css';
import type { CandidateRow } from './suggest-words.ts';

interface CandidatesProps {
  readonly board: Board;
  readonly rows: readonly CandidateRow[];
  /** Which of them lies on the board to be tried; -1 for none. */
  readonly tried: number;
  /** They are of a design that has changed since. */
  readonly isOld: boolean;
  readonly onTry: (at: number) => void;
  readonly onTake: (at: number) => void;
}

/** Candidates to walk through with the arrows: each lights up on the board; Enter takes it. */
export function Candidates({ board, rows, tried, isOld, onTry, onTake }: CandidatesProps) {
  const id = useId();
  const list = useRef<HTMLDivElement>(null);
  useEffect(() => {
    list.current?.children[tried]?.scrollIntoView({ block: 'nearest' });
  }, [tried]);
  const pressed = (event: KeyboardEvent) => {
    const next = stepOf(event.key, tried, rows.length);
    if (next !== null) onTry(next);
    else if (event.key === 'Enter' && rows.length > 0) tried < 0 ? onTry(0) : onTake(tried);
    else return;
    event.preventDefault();
  };
  return (
    <div
      ref={list}
      className={styles.list}
      data-old={isOld}
      role="listbox"
      aria-label="Suggested chords"
      tabIndex={0}
      aria-activedescendant={tried < 0 ? undefined : `${id}-${tried}`}
      onKeyDown={pressed}
    >
      {rows.map((row, at) => (
        // biome-ignore lint/a11y/useKeyWithClickEvents: keys are the list's
        // biome-ignore lint/a11y/useFocusableInteractive: the list is what has the focus
        <div
          key={row.id}
          id={`${id}-${at}`}
          className={styles.row}
          role="option"
          aria-selected={at === tried}
          onClick={() => onTry(at)}
          onDoubleClick={() => onTake(at)}
        >
          <LitBoard board={board} keys={row.keys} />
          <div>
            <p className={styles.name}>{row.name}</p>
            <p>{row.misfires}</p>
            <p>{row.misses}</p>
            {row.speaksFor !== '' && <p className={styles.reason}>For it: {row.speaksFor}</p>}
            {row.speaksAgainst !== '' && <p className={styles.reason}>Against it: {row.speaksAgainst}</p>}
          </div>
        </div>
      ))}
    </div>
  );
}

/** Where a key leads in the list; null for keys that lead nowhere. */
function stepOf(key: string, from: number, count: number): number | null {
  if (key === 'ArrowDown') return Math.min(count - 1, from + 1);
  if (key === 'ArrowUp') return Math.max(0, from - 1);
  if (key === 'Home') return 0;
  return key === 'End' ? count - 1 : null;
}
