import { useDroppable } from '@dnd-kit/core';
import type { KeyId, Side } from '../../core/keymap/types.ts';
import styles from './board.module.css';
import { dropId } from './drop-id.ts';
import { nodeForDragging } from './node-for-dragging.ts';

interface DropHalfProps {
  readonly keyId: KeyId;
  readonly side: Side;
  readonly width: number;
  readonly top: number;
  readonly height: number;
}

/** The upper or lower part of a key, where a carried thing becomes its tap or its hold. */
export function DropHalf({ keyId, side, width, top, height }: DropHalfProps) {
  const { setNodeRef, isOver } = useDroppable({
    id: dropId({ key: keyId, side }),
    data: { key: keyId, side },
  });
  return (
    <g ref={nodeForDragging(setNodeRef)} data-side={side} data-over={isOver} className={styles.half}>
      <rect className={styles.halfArea} x={-width / 2} y={top} width={width} height={height} rx={1.6} />
      <text className={styles.halfWord} x={0} y={top + height / 2} fontSize={3.2}>
        {side}
      </text>
    </g>
  );
}
