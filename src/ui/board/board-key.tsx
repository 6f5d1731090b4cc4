import { useDraggable } from '@dnd-kit/core';
import { memo } from 'react';
import { keyName } from '../../core/board/key-name.ts';
import type { Board, LayerId } from '../../core/keymap/types.ts';
import type { Carried } from '../../store/bench-state.ts';
import styles from './board.module.css';
import { DropHalf } from './drop-half.tsx';
import { KeyDrawing } from './key-drawing.tsx';
import { type KeyScene, TAP_HALF } from './key-scene.ts';
import { nodeForDragging } from './node-for-dragging.ts';
import { type KeyLight, OrderBadge } from './order-badge.tsx';

interface BoardKeyProps {
  readonly scene: KeyScene & { readonly label: string };
  readonly board: Board;
  readonly frontLayer: LayerId;
  readonly tabStop: boolean;
  readonly selected: boolean;
  /** The card of this key is open. */
  readonly open: boolean;
  /** How the key is lit, as text so that equal lights are equal; null where it is not. */
  readonly light: KeyLight | null;
  /** The binding of this key is being carried. */
  readonly inHand: boolean;
}

/** One key of the board: focusable, a source of its binding, and two places to put something down. */
export const BoardKey = memo(function BoardKey(props: BoardKeyProps) {
  const { scene, board, frontLayer, tabStop, selected, open, light, inHand } = props;
  const { id, width, height } = scene;
  const carried: Carried = {
    carry: 'binding',
    from: { layer: frontLayer, key: id },
    label: keyName(board, id),
  };
  const { setNodeRef, listeners, isDragging } = useDraggable({
    id: `binding:${id}`,
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
      data-open={open}
      data-lit={light !== null}
      data-lifted={isDragging || inHand}
      className={styles.key}
      transform={`translate(${scene.x} ${scene.y}) rotate(${scene.rotation})`}
    >
      <KeyDrawing scene={scene} />
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
      {light !== null && <OrderBadge light={light} x={-width / 2} y={-height / 2} turn={-scene.rotation} />}
    </g>
  );
});
