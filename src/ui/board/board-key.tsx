import { useDraggable } from '@dnd-kit/core';
import { memo } from 'react';
import { keyName } from '../../core/board/key-name.ts';
import type { Board, LayerId } from '../../core/keymap/types.ts';
import type { Carried } from '../../store/bench-state.ts';
import styles from './board.module.css';
import { DropHalf } from './drop-half.tsx';
import { bindingDragId } from './drop-id.ts';
import { type KeyScene, TAP_HALF } from './key-scene.ts';
import { nodeForDragging } from './node-for-dragging.ts';

interface BoardKeyProps {
  readonly scene: KeyScene & { readonly label: string };
  readonly board: Board;
  readonly frontLayer: LayerId;
  readonly tabStop: boolean;
  readonly selected: boolean;
}

/**
 * One key of the board, without its looks: focusable, a source of its binding, and two places to put something down.
 * The drawing lies under it and apart from it, so that the key's name is its label and not the signs on the cap.
 */
export const BoardKey = memo(function BoardKey(props: BoardKeyProps) {
  const { scene, board, frontLayer, tabStop, selected } = props;
  const { id, width, height } = scene;
  const carried: Carried = {
    carry: 'binding',
    from: { layer: frontLayer, key: id },
    label: keyName(board, id),
  };
  const { setNodeRef, listeners } = useDraggable({
    id: bindingDragId(id),
    data: carried,
    disabled: !scene.bound,
  });
  // Enter and Space on a key have their own meaning here: a binding is picked up by keyboard from the key's card.
  const { onKeyDown: _, ...pointerListeners } = listeners ?? {};
  return (
    <g
      ref={nodeForDragging(setNodeRef)}
      {...pointerListeners}
      role="option"
      aria-selected={selected}
      aria-label={scene.label}
      tabIndex={tabStop ? 0 : -1}
      data-key={id}
      className={styles.key}
      transform={`translate(${scene.x} ${scene.y}) rotate(${scene.rotation})`}
    >
      <DropHalf keyId={id} side="tap" width={width} top={-height / 2} height={height * TAP_HALF} />
      <DropHalf
        keyId={id}
        side="hold"
        width={width}
        top={height * (TAP_HALF - 0.5)}
        height={height * (1 - TAP_HALF)}
      />
      <rect
        className={styles.ring}
        x={-width / 2 - 0.7}
        y={-height / 2 - 0.7}
        width={width + 1.4}
        height={height + 1.4}
        rx={3.2}
      />
    </g>
  );
});
