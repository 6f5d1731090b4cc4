import { overlappingCaps } from '../../../../core/board/caps.ts';
import { keysOutOfReach } from '../../../../core/board/reach.ts';
import type { KeyId } from '../../../../core/keymap/types.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { Caution } from '../../../board/caution.tsx';
import { Button } from '../../../widgets/button.tsx';
import styles from './panel.module.css';
import { farWords, keptWords, lossLines, overlapWords, reachWords } from './shape-words.ts';
import { useBecame } from './use-became.ts';
import { useBoardWork } from './use-board-work.ts';

/** What the design loses by this board, always in view, so that nobody is taken by surprise. */
export function KeptPanel() {
  const { shown } = useBoardWork();
  const { losses } = useBecame(shown);
  const lines = lossLines(losses);
  return (
    <section className={styles.part} aria-label="What is bound">
      <h2>What is bound</h2>
      <p data-kept={losses.lostBindings === 0}>{keptWords(losses)}</p>
      <p className={styles.quiet}>
        Practice, checks and streams that were kept with this design go along with their keys.
      </p>
      {lines.length > 0 && (
        <ul className={styles.lines}>
          {lines.map(({ id, text }) => (
            <li key={id}>{text}</li>
          ))}
        </ul>
      )}
    </section>
  );
}

/** What stands against the board itself: caps that overlap, keys out of reach. */
export function BoardFaults() {
  const { shown } = useBoardWork();
  const { board } = shown;
  const select = useBoardDrafts((drafts) => drafts.select);
  const units = useSettings((settings) => settings.units);
  const far = keysOutOfReach(board);
  const faults: { readonly keys: readonly KeyId[]; readonly text: string }[] = [
    ...overlappingCaps(board).map((pair) => ({ keys: pair, text: overlapWords(board, pair) })),
    ...far.map((one) => ({ keys: [one.key], text: farWords(board, one, units) })),
  ];
  return (
    <section className={styles.part} aria-label="The board itself">
      <h2>The board itself</h2>
      {faults.length === 0 && <p>No caps overlap, and every finger reaches its keys.</p>}
      <ul className={styles.faults}>
        {faults.map(({ keys, text }) => (
          <li key={text}>
            <span>{text.charAt(0).toUpperCase() + text.slice(1)}</span>
            <Button tone="quiet" onClick={() => select(keys)}>
              Show
            </Button>
          </li>
        ))}
      </ul>
      {far.length > 0 && <p className={styles.quiet}>{reachWords(units)}</p>}
      <Caution />
    </section>
  );
}
