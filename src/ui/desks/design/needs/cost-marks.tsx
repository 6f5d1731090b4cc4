import type { Route } from '../../../../core/routes/types.ts';
import styles from './cost-marks.module.css';

/** The moves of a route as signs: a dot a press, a bar a hold, joined dots a chord; a cross where there is no way. */
export function CostMarks({ route }: { readonly route: Route | null }) {
  if (route === null) return <span className={styles.none}>×</span>;
  const moves = route.steps.filter((step) => step.move !== 'release').slice(0, 6);
  return moves.map((step, index) => (
    <span
      // biome-ignore lint/suspicious/noArrayIndexKey: a move has no identity but its place in the route
      key={index}
      className={styles.move}
      data-move={step.move}
      data-chord={step.keys.length > 1}
    >
      {step.keys.map((key) => (
        <i key={key} className={styles.sign} />
      ))}
    </span>
  ));
}
