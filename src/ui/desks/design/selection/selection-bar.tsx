import { keyName } from '../../../../core/board/key-name.ts';
import type { KeyId, LayerId } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import type { OpenCard } from '../../../../store/bench-state.ts';
import { Button } from '../../../widgets/button.tsx';
import styles from './selection.module.css';

/** The most keys that a chord may have. */
const MOST = 5;
/** Within the spread of nine in ten two- and three-key chords of one hand (38 and 51 ms, piano performances; see the chord-window rule). */
const FIRST_WINDOW_MS = 50;

/** A chord to begin with: these keys, live on the layer in front, doing nothing yet. */
export function chordDraft(keys: readonly KeyId[], layer: LayerId): OpenCard {
  return {
    card: 'new-chord',
    draft: { keys, windowMs: FIRST_WINDOW_MS, layers: [layer], action: { do: 'nothing' } },
  };
}

/** What can be done with the selected keys. */
export function SelectionBar() {
  const board = useBench((bench) => bench.keymap.board);
  const selected = useBench((bench) => bench.selectedKeys);
  const frontLayer = useBench((bench) => bench.frontLayer);
  const selectKeys = useBench((bench) => bench.selectKeys);
  const openCardOf = useBench((bench) => bench.openCardOf);
  if (selected.length === 0) {
    return (
      <p className={styles.hint}>
        Shift and click keys, or Space on the focused one, to select them for a chord. Type a character on a
        key to bind it.
      </p>
    );
  }
  const names = selected.map((key) => keyName(board, key)).join(', ');
  return (
    <div className={styles.bar} role="status">
      <span className={styles.names}>{names}</span>
      <Button
        tone="accent"
        disabled={selected.length < 2 || selected.length > MOST}
        title={selected.length > MOST ? `A chord has at most ${MOST} keys` : undefined}
        onClick={() => openCardOf(chordDraft(selected, frontLayer))}
      >
        Make chord
      </Button>
      <Button tone="quiet" onClick={() => selectKeys([], 'only')}>
        Select none
      </Button>
    </div>
  );
}
