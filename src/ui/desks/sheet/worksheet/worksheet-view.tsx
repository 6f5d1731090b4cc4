import { useMemo } from 'react';
import { useBench } from '../../../../store/bench.ts';
import { useHost } from '../../../../store/hosts.ts';
import { worksheetTables } from './worksheet-tables.ts';
import styles from './worksheet-view.module.css';

/** Every layer and the chords as tables to be gone through line by line. */
export function WorksheetView() {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const tables = useMemo(() => worksheetTables(keymap, host), [keymap, host]);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, and holds nothing else that the keyboard could reach
    <section className={styles.worksheet} tabIndex={0} aria-label="Worksheet">
      {tables.map(({ id, title, heads, rows }) => (
        <table key={id} className={styles.table}>
          <caption>{title}</caption>
          <thead>
            <tr>
              {heads.map((head) => (
                <th key={head} scope="col">
                  {head}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            {rows.map(({ id: row, cells }) => (
              <tr key={row}>
                {cells.map((cell, at) => (
                  <td key={heads[at]}>{cell}</td>
                ))}
              </tr>
            ))}
          </tbody>
        </table>
      ))}
    </section>
  );
}
