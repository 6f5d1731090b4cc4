import { ms, type Names } from '../../../core/rehearse/key-words.ts';
import { firstAt } from '../../../core/rehearse/presses-between.ts';
import type { Run } from '../../../core/rehearse/run.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './rehearse.module.css';
import { wordRows } from './time-line/moment-words.ts';

/** So many lines at a time; a long stream has tens of thousands. */
const LINES = 200;
/** So many events further back "earlier" goes. */
const EVENTS_BACK = 60;

/** The stream in words from the cursor on: all that the picture shows, to be read. */
export function StreamInWords({
  run,
  names,
  cursorMs,
  onCursor,
}: {
  readonly run: Run;
  readonly names: Names;
  readonly cursorMs: number;
  readonly onCursor: (t: number) => void;
}) {
  const rows = wordRows(run, cursorMs, LINES, names);
  const before = firstAt(run.events, cursorMs, ({ t }) => t) - EVENTS_BACK;
  const last = rows.at(-1)?.t ?? cursorMs;
  return (
    <>
      <div className={styles.wordTools}>
        <Button disabled={cursorMs <= 0} onClick={() => onCursor(run.events[Math.max(0, before)]?.t ?? 0)}>
          Earlier
        </Button>
        <Button disabled={rows.length < LINES} onClick={() => onCursor(last)}>
          Later
        </Button>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: it scrolls, so the keyboard must reach it */}
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
    </>
  );
}
