import { useState } from 'react';
import type { Keymap } from '../../../core/keymap/types.ts';
import type { ChangeRow } from '../../../core/versions/change-rows.ts';
import { useComparison } from '../../../store/versions/use-comparison.ts';
import { ComparedBoards } from './compared-boards.tsx';
import { Figures } from './figures.tsx';
import { countWords, rowGroups } from './version-words.ts';
import styles from './versions.module.css';

/** Two states of a design side by side: boards, figures, and every difference in words. */
export function Comparison({ before, after }: { readonly before: Keymap; readonly after: Keymap }) {
  const compared = useComparison(before, after);
  const [looked, setLooked] = useState<ChangeRow | null>(null);
  const { rows } = compared;
  // A row of another pair of versions is nothing to be looked at any more.
  const lookedAt = looked !== null && rows.includes(looked) ? looked : null;
  return (
    <>
      <ComparedBoards compared={compared} lookedAt={lookedAt} onLook={() => setLooked(null)} />
      <Figures compared={compared} />
      <section aria-label="Differences" className={styles.differences}>
        <h3>{countWords(rows)}</h3>
        {rowGroups(rows).map(({ title, rows: group }) => (
          <div key={title}>
            <h4 className={styles.heading}>{title}</h4>
            <ul>
              {group.map((row) => (
                <li key={`${row.where} ${row.chord ?? ''} ${row.what}`}>
                  <button
                    type="button"
                    className={styles.difference}
                    aria-pressed={row === lookedAt}
                    disabled={row.keys.length === 0}
                    onClick={() => setLooked(row === lookedAt ? null : row)}
                  >
                    {row.where !== '' && <span className={styles.where}>{row.where}</span>}
                    <span>{row.what}</span>
                  </button>
                </li>
              ))}
            </ul>
          </div>
        ))}
      </section>
    </>
  );
}
