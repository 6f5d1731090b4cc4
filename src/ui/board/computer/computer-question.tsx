import { codeName } from '../../../core/host/code-names.ts';
import { isCode } from '../../../core/keymap/codes.ts';
import { Button } from '../../widgets/button.tsx';
import styles from './computer.module.css';
import { probeCodes, probeWords } from './computer-words.ts';
import type { Computer } from './use-computer.ts';

/** In place of what a desk begins with: the few presses that tell how this computer reads keys. Keys are held back meanwhile. */
export function ComputerQuestion({
  computer,
  title,
}: {
  readonly computer: Computer;
  readonly title: string;
}) {
  const { probe, other, told, verdict } = computer;
  return (
    <section className={styles.question} aria-label="Presses on this computer">
      <h2 className={styles.title}>First, a few presses on this computer</h2>
      <p>
        {verdict === 'other'
          ? `It is not on ${title}, which the design is for. What follows tells which layout it is on.`
          : `They tell whether it is on ${title}, which the design is for; otherwise other characters would come.`}
      </p>
      {probe === null ? (
        <p role="status">Fetching the layouts…</p>
      ) : (
        <p className={styles.press} role="status" aria-live="polite">
          Press <b data-probe={probeCodes(probe).join(' ')}>{probeWords(probe)}</b>
          <span className={styles.quiet}>
            {other !== null && isCode(other) ? `That was ${codeName(other)}. ` : ''}
            {told > 0 ? `${told} told so far.` : 'On any keyboard of this computer.'}
          </span>
        </p>
      )}
      <p className={styles.buttons}>
        <Button onClick={computer.cannotPress} disabled={probe === null}>
          I cannot press that
        </Button>
        <Button tone="quiet" onClick={computer.skip}>
          Skip this
        </Button>
        <span className={styles.quiet}>Escape: cannot press that. Escape held for a second: skip.</span>
      </p>
    </section>
  );
}
