import { useState } from 'react';
import type { LayerId } from '../../../core/keymap/types.ts';
import type { ChangeRow } from '../../../core/versions/change-rows.ts';
import type { ComparedDesigns } from '../../../store/versions/use-comparison.ts';
import { StillBoard } from '../../board/still-board.tsx';
import { Choice } from '../../widgets/choice.tsx';
import { layerOptions, marksOf, marksWords } from './compared-layers.ts';
import styles from './versions.module.css';

/** Both boards with one layer in front; what differs there is marked, or only the difference that is looked at. */
export function ComparedBoards({
  compared: { comparison, rows, hosts },
  lookedAt,
  onLook,
}: {
  readonly compared: ComparedDesigns;
  readonly lookedAt: ChangeRow | null;
  /** Another layer was chosen: what was looked at is not in front any more. */
  readonly onLook: () => void;
}) {
  const options = layerOptions(comparison, rows);
  const [wanted, setWanted] = useState<LayerId | null>(null);
  const most = options.find(({ changes }) => changes > 0) ?? options[0];
  const layer = lookedAt?.layer ?? options.find(({ value }) => value === wanted)?.value ?? most?.value ?? '';
  const marked = marksOf(rows, layer, lookedAt);
  const sides = [
    { name: 'Before', keymap: comparison.before, host: hosts.before.host },
    { name: 'After', keymap: comparison.after, host: hosts.after.host },
  ];
  return (
    <section aria-label="Boards" className={styles.boards}>
      {options.length > 1 && (
        <Choice
          label="Layer in front"
          hideLabel
          value={layer}
          options={options}
          onChange={(id) => {
            setWanted(id);
            onLook();
          }}
        />
      )}
      <div className={styles.both}>
        {sides.map(({ name, keymap, host }) => {
          const front = keymap.layers.find(({ id }) => id === layer);
          return (
            <figure key={name}>
              <figcaption className={styles.caption}>
                {name}
                {front === undefined && ': the layer is not there'}
              </figcaption>
              <StillBoard
                keymap={keymap}
                host={host}
                layer={front?.id ?? keymap.layers[0]?.id ?? ''}
                marked={marked}
                title={`${name}: ${marksWords(marked.size)}`}
              />
            </figure>
          );
        })}
      </div>
    </section>
  );
}
