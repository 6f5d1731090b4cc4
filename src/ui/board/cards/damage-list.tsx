import type { LegendSource } from '../../../core/host/legend.ts';
import type { DamagingRun } from '../../../core/typist/study.ts';
import { damageInWords } from '../accident-words.ts';
import styles from './cards.module.css';

/** Runs under this rate, per 1,000 words, are not worth a line. */
const LEAST = 0.05;

/** Which runs of the text do the damage, with counts. */
export function DamageList({
  damage,
  source,
}: {
  readonly damage: readonly DamagingRun[];
  readonly source: LegendSource;
}) {
  const shown = damage.filter(({ misfires }) => misfires >= LEAST).slice(0, 4);
  if (shown.length === 0) return null;
  return (
    <div className={styles.damage}>
      <span className={styles.default}>What sets it off, in 1,000 words</span>
      <ul>
        {shown.map((run) => {
          const words = damageInWords(run, source);
          return <li key={words}>{words}</li>;
        })}
      </ul>
    </div>
  );
}
