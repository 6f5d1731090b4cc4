import { useState } from 'react';
import { ms, type Names } from '../../../core/rehearse/key-words.ts';
import type { Run } from '../../../core/rehearse/run.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './rehearse.module.css';
import { happenedAt, stateRows, wordRows } from './time-line/moment-words.ts';

/** So many lines of the stream in words at a time. */
const LINES = 60;

/** How the design stands at the cursor, and what happened there. */
export function Readout({
  run,
  names,
  cursorMs,
}: {
  readonly run: Run;
  readonly names: Names;
  readonly cursorMs: number;
}) {
  const [inWords, setInWords] = useState(false);
  const happened = happenedAt(run, cursorMs, names);
  return (
    <>
      <dl className={styles.readout}>
        <div>
          <dt>At</dt>
          <dd>{ms(cursorMs)}</dd>
        </div>
        {stateRows(run, cursorMs, names).map(([label, value]) => (
          <div key={label}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <div className={styles.happened}>
        <p>
          {happened.length === 0
            ? 'Nothing happens at this moment: ← and → go to the next.'
            : happened.join('. ')}
        </p>
        <Button tone="quiet" aria-expanded={inWords} onClick={() => setInWords(!inWords)}>
          In words
        </Button>
      </div>
      {inWords && <Words run={run} names={names} from={cursorMs} />}
    </>
  );
}

/** The stream in words from the cursor on: what the picture shows, to be read. */
function Words({ run, names, from }: { readonly run: Run; readonly names: Names; readonly from: number }) {
  const rows = wordRows(run, from, LINES, names);
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it
    <section className={styles.words} aria-label="The stream in words, from the cursor on" tabIndex={0}>
      <table>
        <tbody>
          {rows.map(({ t, what, isTelling }, at) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: lines have no name, and several may say the same
            <tr key={at} data-telling={isTelling}>
              <th scope="row">{ms(t)}</th>
              <td>{what}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
