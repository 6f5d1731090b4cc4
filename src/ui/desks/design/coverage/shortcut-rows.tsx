import { handsWords, routeHands } from '../../../../core/coverage/shortcut-hands.ts';
import { needText } from '../../../../core/keymap/need.ts';
import type { NeedRoute } from '../../../../core/routes/types.ts';
import { useAnalysis } from '../../../../store/analysis.ts';
import { needLegend } from '../needs/need-rows.ts';
import styles from './coverage.module.css';

/** For each shortcut whether one hand can do it, and whether a finger has two things to do. */
export function ShortcutRows({ shortcuts }: { readonly shortcuts: readonly NeedRoute[] }) {
  const { keymap } = useAnalysis().facts;
  return (
    <ul className={styles.rows}>
      {shortcuts.map(({ need, route }) => (
        <li key={needText(need)} className={styles.shortcut} data-shortcut={needText(need)}>
          <b>{needLegend(need).name}</b>
          <span className={styles.quiet}>
            {route === null ? 'cannot be pressed on this design' : handsWords(routeHands(keymap, route))}
          </span>
        </li>
      ))}
    </ul>
  );
}
