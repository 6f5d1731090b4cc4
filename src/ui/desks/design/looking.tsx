import { useAnalysisIsNow } from '../../../store/analysis-after-edit.tsx';
import styles from './design-desk.module.css';

/** Says that needs and findings are still those from before an edit. It is seen only where that takes a while. */
export function Looking() {
  return useAnalysisIsNow() ? null : <span className={styles.looking}>Looking at the change…</span>;
}
