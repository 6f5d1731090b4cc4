import { CAUTION } from '../../../core/base/care.ts';
import { BREAK_WORDS, POSTURE_WORDS } from '../../../core/practice/care.ts';
import styles from './progress-side.module.css';

/** What to mind while practising. */
export function Care() {
  return (
    <section className={styles.care} aria-label="Care">
      <p>{POSTURE_WORDS}</p>
      <p>{BREAK_WORDS}</p>
      <p>{CAUTION}</p>
    </section>
  );
}
