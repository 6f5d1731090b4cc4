import { useDndContext, useDraggable, useDroppable } from '@dnd-kit/core';
import { type KeyboardEvent, useEffect, useLayoutEffect, useRef } from 'react';
import type { EntryWords } from '../../../../core/findings/entry-words.ts';
import { openNotesOfLayer } from '../../../../core/keymap/open-notes.ts';
import type { Layer } from '../../../../core/keymap/types.ts';
import { useBench } from '../../../../store/bench.ts';
import { MenuButton } from '../../../widgets/menu.tsx';
import { edgeOfDrop, movedWords, sheetItems } from './layer-order.ts';
import styles from './layers.module.css';

/** One sheet of the stack: its rung's colour and number, its name, and how one gets in. Dragged, it finds another place. */
export function LayerSheet({
  layer,
  number,
  inFront,
  entry,
  onChange,
  say,
}: {
  readonly layer: Layer;
  readonly number: number;
  readonly inFront: boolean;
  /** Null for a layer that is so new that it is not known yet. */
  readonly entry: EntryWords | null;
  readonly onChange: () => void;
  /** Tells what came of a move by keyboard. */
  readonly say: (words: string) => void;
}) {
  const keymap = useBench((bench) => bench.keymap);
  const { edit, showLayer } = useBench.getState();
  const sheet = useRef<HTMLLIElement | null>(null);
  const { face, moved } = useMovesByKey(layer, number, say);
  const drag = useDraggable({ id: layer.id, disabled: number === 0 });
  const drop = useDroppable({ id: layer.id });
  const dragged = useDndContext().active?.id;
  // Brought to the front from elsewhere it may lie beyond the edge of a long stack.
  useEffect(() => {
    if (inFront) sheet.current?.scrollIntoView({ block: 'nearest', inline: 'nearest' });
  }, [inFront]);
  const bound = Object.keys(layer.places).length;
  // Enter and Space show the layer; its order has keys of its own.
  const { onKeyDown: _, ...pointerListeners } = drag.listeners ?? {};
  const change = () => {
    showLayer(layer.id);
    onChange();
  };
  return (
    <li
      ref={(element) => {
        sheet.current = element;
        drop.setNodeRef(element);
      }}
      className={styles.sheet}
      data-front={inFront}
      data-layer={layer.id}
      data-colour={number % 7}
      data-lifted={drag.isDragging}
      data-drop={drop.isOver ? edgeOfDrop(keymap, String(dragged), layer.id) : null}
    >
      <button
        ref={(element) => {
          face.current = element;
          drag.setNodeRef(element);
        }}
        {...pointerListeners}
        type="button"
        className={styles.face}
        aria-pressed={inFront}
        aria-keyshortcuts="Alt+ArrowUp Alt+ArrowDown"
        onKeyDown={moved}
        onClick={() => showLayer(layer.id)}
      >
        <span className={styles.rung}>{number}</span>
        <span className={styles.name}>{layer.name}</span>
        <span className={entry?.canEnter === false ? styles.noEntry : styles.entry}>{entry?.sentence}</span>
        <span className={styles.bound}>{bound === 1 ? '1 key' : `${bound} keys`}</span>
        {openNotesOfLayer(keymap, layer.id).map(({ id, text }) => (
          <span key={id} className={styles.noted} data-note={id}>
            Noted: {text}
          </span>
        ))}
      </button>
      <MenuButton
        label={`More for layer ${layer.name}`}
        items={sheetItems(keymap, layer.id, { edit, showLayer }, change)}
      >
        <span aria-hidden="true">⋯</span>
      </MenuButton>
    </li>
  );
}

/** Alt with an arrow moves the sheet, which keeps the focus at its new place. */
function useMovesByKey(layer: Layer, number: number, say: (words: string) => void) {
  const face = useRef<HTMLButtonElement | null>(null);
  const from = useRef<number | null>(null);
  useLayoutEffect(() => {
    if (from.current !== null && from.current !== number) face.current?.focus();
    from.current = null;
  }, [number]);
  const moved = (event: KeyboardEvent) => {
    const step = event.key === 'ArrowUp' ? 1 : event.key === 'ArrowDown' ? -1 : 0;
    if (!event.altKey || step === 0) return;
    event.preventDefault();
    const { keymap, edit } = useBench.getState();
    if (number + step >= keymap.layers.length) return;
    from.current = number;
    edit({ edit: 'move-layer', layer: layer.id, to: number + step });
    const after = useBench.getState().keymap;
    if (after !== keymap) say(movedWords(after, layer.id));
  };
  return { face, moved };
}
