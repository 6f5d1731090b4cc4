import { describeSteps } from '../../../../core/routes/describe.ts';
import { useAnalysis } from '../../../../store/analysis.ts';
import { useBench } from '../../../../store/bench.ts';
import type { NeedRow } from './need-rows.ts';
import styles from './needs-panel.module.css';
import { WaiveForm } from './waive-form.tsx';

/** How the need that is looked at is typed, in words; where none is, what to do here. */
export function NeedDetail({ row }: { readonly row: NeedRow | null }) {
  const { keymap } = useAnalysis().facts;
  const carried = useBench((bench) => bench.carried);
  if (carried !== null) {
    return (
      <div className={styles.detail}>
        <span className={styles.detailName}>{carried.label}</span>{' '}
        <span className={styles.steps}>goes where you put it on the board.</span>
      </div>
    );
  }
  if (row === null) {
    return (
      <div className={styles.detail}>
        <span className={styles.steps}>
          Drag a need onto a key, or click it and then the key. Looking at one lights up how it is typed.
        </span>
      </div>
    );
  }
  return (
    <div className={styles.detail}>
      <span className={styles.detailName}>{row.name}</span>{' '}
      {row.route === null ? (
        <span className={styles.missing}>cannot be typed on this design.</span>
      ) : (
        <span className={styles.steps}>
          {describeSteps(keymap, row.route).join(', ')} ({row.cost}
          {row.route.clumsy ? '; one finger must hold and press at once' : ''})
        </span>
      )}
      <div>
        <WaiveForm key={row.text} need={row.text} name={row.name} />
      </div>
    </div>
  );
}
