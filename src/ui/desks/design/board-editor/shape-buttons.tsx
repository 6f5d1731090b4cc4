import type { BoardDraft } from '../../../../core/board/draft.ts';
import type { KeyId } from '../../../../core/keymap/types.ts';
import { useSettings } from '../../../../store/settings/use-settings.ts';
import { tabStopOf } from '../../../board/tab-stop.ts';
import styles from './canvas.module.css';
import { shapeLabel } from './shape-words.ts';

/** The keys that can be focused; they have no looks of their own but the focus ring. */
export function ShapeButtons({
  draft,
  selected,
  known,
}: {
  readonly draft: BoardDraft;
  readonly selected: readonly KeyId[];
  readonly known: ReadonlyMap<KeyId, string>;
}) {
  const { board } = draft;
  const units = useSettings((settings) => settings.units);
  const tabStop = tabStopOf(board, selected[0] ?? null);
  return (
    <g role="listbox" aria-multiselectable="true" aria-label="Keys">
      {board.keys.map((key) => (
        <g
          key={key.id}
          role="option"
          aria-selected={selected.includes(key.id)}
          aria-label={shapeLabel(board, key, !known.has(key.id), units)}
          tabIndex={key.id === tabStop ? 0 : -1}
          data-key={key.id}
          className={styles.hold}
          transform={`translate(${key.x} ${key.y}) rotate(${key.rotation})`}
        >
          <rect
            x={-key.width / 2 - 0.7}
            y={-key.height / 2 - 0.7}
            width={key.width + 1.4}
            height={key.height + 1.4}
            rx={3.2}
          />
        </g>
      ))}
    </g>
  );
}
