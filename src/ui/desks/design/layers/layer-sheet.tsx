import { useEffect, useRef } from 'react';
import type { EntryWords } from '../../../../core/findings/entry-words.ts';
import type { Layer } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { IconButton } from '../../../widgets/button.tsx';
import styles from './layers.module.css';

/** One sheet of the stack: its rung's colour and number, its name, and how one gets in. */
export function LayerSheet({
  layer,
  number,
  inFront,
  entry,
  onChange,
}: {
  readonly layer: Layer;
  readonly number: number;
  readonly inFront: boolean;
  readonly entry: EntryWords;
  readonly onChange: () => void;
}) {
  const showLayer = useBench((bench) => bench.showLayer);
  const sheet = useRef<HTMLLIElement>(null);
  // Brought to the front from elsewhere it may lie beyond the edge of a long stack.
  useEffect(() => {
    if (inFront) sheet.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [inFront]);
  const bound = Object.keys(layer.places).length;
  return (
    <li
      ref={sheet}
      className={styles.sheet}
      data-front={inFront}
      data-layer={layer.id}
      data-colour={number % 7}
    >
      <button
        type="button"
        className={styles.face}
        aria-pressed={inFront}
        onClick={() => showLayer(layer.id)}
      >
        <span className={styles.rung}>{number}</span>
        <span className={styles.name}>{layer.name}</span>
        <span className={entry.canEnter ? styles.entry : styles.noEntry}>{entry.sentence}</span>
        <span className={styles.bound}>{bound === 1 ? '1 key' : `${bound} keys`}</span>
      </button>
      <IconButton
        label={`Change layer ${layer.name}`}
        onClick={() => {
          showLayer(layer.id);
          onChange();
        }}
      >
        ⋯
      </IconButton>
    </li>
  );
}
