import { CAUTION, LOAD_CAUTION } from '../../core/base/care.ts';
import styles from './caution.module.css';

/** The caution that stands wherever a face rates reach, effort or comfort; `ofLoad` where presses are weighed. */
export function Caution({ ofLoad = false }: { readonly ofLoad?: boolean }) {
  return (
    <p className={styles.caution} data-caution>
      {ofLoad ? LOAD_CAUTION : CAUTION}
    </p>
  );
}
