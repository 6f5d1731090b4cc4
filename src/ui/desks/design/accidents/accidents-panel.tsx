import { MeasureLine } from '../measure/measure-line.tsx';
import styles from './accidents.module.css';
import { TypistFields } from './typist-fields.tsx';

/** How often ordinary typing sets something off on the open design. */
export function AccidentsPanel() {
  return (
    <div className={styles.panel}>
      <TypistFields />
      <MeasureLine />
    </div>
  );
}
