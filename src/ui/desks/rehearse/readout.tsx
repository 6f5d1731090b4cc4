import { ms, type Names } from '../../../core/rehearse/key-words.ts';
import type { Run } from '../../../core/rehearse/run.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './rehearse.module.css';
import { happenedAt, stateRows } from './time-line/moment-words.ts';

/** How the design stands at the cursor, and what happened there. */
export function Readout({
  run,
  names,
  cursorMs,
  inWords,
  onInWords,
}: {
  readonly run: Run;
  readonly names: Names;
  readonly cursorMs: number;
  readonly inWords: boolean;
  readonly onInWords: () => void;
}) {
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
        <Button tone="quiet" aria-pressed={inWords} onClick={onInWords}>
          In words
        </Button>
      </div>
    </>
  );
}
