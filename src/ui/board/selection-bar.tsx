import { useBench } from '../../store/bench.ts';
import { Button } from '../widgets/button.tsx';
import styles from './board.module.css';
import { newChordDraft, whyNoChord } from './new-chord.ts';

/** What can be done with the keys that are selected; stands at the foot of the board while some are. */
export function SelectionBar() {
  const keymap = useBench((bench) => bench.keymap);
  const keys = useBench((bench) => bench.selectedKeys);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const selectKeys = useBench((bench) => bench.selectKeys);
  const openCardOf = useBench((bench) => bench.openCardOf);
  if (keys.length === 0) return null;
  const reason = whyNoChord(keymap, keys);
  return (
    <section className={styles.selection} aria-label="Selected keys">
      <span>{keys.length === 1 ? '1 key' : `${keys.length} keys`}</span>
      <Button
        tone="accent"
        disabled={reason !== null}
        title={reason ?? undefined}
        onClick={() => openCardOf({ card: 'new-chord', draft: newChordDraft(keys, frontLayer) })}
      >
        Make chord
      </Button>
      <Button tone="quiet" onClick={() => selectKeys([], 'only')}>
        Clear selection
      </Button>
    </section>
  );
}
