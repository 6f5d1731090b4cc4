import type { FingerOfHand, TextLoad } from '../../../../core/coverage/text-load.ts';
import type { Finger, Hand } from '../../../../core/keymap/types.ts';
import { loadRows, percent } from './coverage-words.ts';
import styles from './text-load.module.css';

const FINGERS: readonly Finger[] = ['little', 'ring', 'middle', 'index', 'thumb'];

/** What the own text costs on the design: figures, and the load of ten fingers. */
export function TextLoadView({ load }: { readonly load: TextLoad }) {
  return (
    <>
      <dl className={styles.figures}>
        {loadRows(load).map(([what, figure]) => (
          <div key={what}>
            <dt>{what}</dt>
            <dd>{figure}</dd>
          </div>
        ))}
      </dl>
      <FingerTable load={load} />
    </>
  );
}

/** Ten fingers as bars that grow outwards from their names, left hand to the left; a table for those who don't see it. */
function FingerTable({ load }: { readonly load: TextLoad }) {
  const most = Math.max(0.001, ...load.fingers.values());
  const bar = (hand: Hand, finger: Finger) => {
    const named: FingerOfHand = `${hand} ${finger}`;
    const share = load.fingers.get(named) ?? 0;
    return (
      <td className={styles.cell} data-hand={hand}>
        <span className={styles.row}>
          <span className={styles.share}>{percent(share)}</span>
          <span className={styles.track}>
            <span className={styles.bar} style={{ width: `${(share / most) * 100}%` }} />
          </span>
        </span>
      </td>
    );
  };
  return (
    <table className={styles.fingers}>
      <caption>Share of the presses by finger</caption>
      <thead>
        <tr>
          <th scope="col">left hand {percent(load.hands.get('left') ?? 0)}</th>
          <td />
          <th scope="col">right hand {percent(load.hands.get('right') ?? 0)}</th>
        </tr>
      </thead>
      <tbody>
        {FINGERS.map((finger) => (
          <tr key={finger}>
            {bar('left', finger)}
            <th scope="row">{finger}</th>
            {bar('right', finger)}
          </tr>
        ))}
      </tbody>
    </table>
  );
}
