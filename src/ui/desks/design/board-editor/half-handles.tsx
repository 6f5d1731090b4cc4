import type { KeyboardEvent } from 'react';
import { boardExtent, capCorners } from '../../../../core/board/caps.ts';
import { moveHalf, turnHalf } from '../../../../core/board/halves.ts';
import { convexHull } from '../../../../core/board/hull.ts';
import type { Board, Hand } from '../../../../core/keymap/types.ts';
import { useBoardDrafts } from '../../../../store/board-drafts.ts';
import { roundedPath } from '../../../board/rounded-path.ts';
import styles from './canvas.module.css';
import { halfCommandOf } from './shape-command.ts';
import { useBoardWork } from './use-board-work.ts';

const HANDS: readonly Hand[] = ['left', 'right'];
/** The plate that a half lies on goes so far beyond its caps, mm. */
const PLATE_MM = 4;
const HANDLE = { width: 36, height: 8, above: 8 };

/** The halves as plates under their caps. */
export function Plates({ board }: { readonly board: Board }) {
  return HANDS.map((hand) => {
    const keys = board.keys.filter((key) => key.hand === hand);
    if (keys.length === 0) return null;
    const hull = convexHull(keys.flatMap((key) => capCorners(key, PLATE_MM)));
    return <path key={hand} className={styles.plate} d={roundedPath(hull, 7)} />;
  });
}

/** A handle above each half: its left part moves the half, its right part turns it; by keys it does both. */
export function HalfHandles({ board }: { readonly board: Board }) {
  return HANDS.map((hand) => {
    const keys = board.keys.filter((key) => key.hand === hand);
    if (keys.length === 0) return null;
    const { minX, minY, maxX } = boardExtent({ ...board, keys });
    return (
      <HalfHandle
        key={hand}
        hand={hand}
        x={(minX + maxX) / 2 - HANDLE.width / 2}
        y={minY - PLATE_MM - HANDLE.above}
      />
    );
  });
}

function HalfHandle({ hand, x, y }: { readonly hand: Hand; readonly x: number; readonly y: number }) {
  const { draft, alike } = useBoardWork();
  const pressed = (event: KeyboardEvent) => {
    const command = halfCommandOf(event);
    if (command === null) return;
    event.preventDefault();
    event.stopPropagation();
    const { change } = useBoardDrafts.getState();
    if ('by' in command) change('Move a half', moveHalf(draft, hand, command.by, alike));
    else change('Turn a half', turnHalf(draft, hand, command.degrees, alike));
  };
  const turnAt = HANDLE.width - HANDLE.height;
  return (
    // biome-ignore lint/a11y/useSemanticElements: there are no buttons in a drawing
    <g
      role="button"
      tabIndex={0}
      className={styles.handle}
      aria-label={`${hand === 'left' ? 'Left' : 'Right'} half: drag it, or arrow keys move it and Page Up and Page Down turn it`}
      transform={`translate(${x} ${y})`}
      onKeyDown={pressed}
    >
      <rect className={styles.handleArea} width={HANDLE.width} height={HANDLE.height} rx={4} />
      <g data-grip="half" data-hand={hand} className={styles.handleMove}>
        <rect className={styles.handlePart} width={turnAt} height={HANDLE.height} rx={4} />
        <path
          d={`M4 4h4M6 2v4M4 4l.9-.8M4 4l.9.8M8 4l-.9-.8M8 4l-.9.8M6 2l-.8.9M6 2l.8.9M6 6l-.8-.9M6 6l.8-.9`}
        />
        <text x={9.6} y={HANDLE.height / 2} fontSize={3.4}>
          {hand} half
        </text>
      </g>
      <g
        data-grip="half-turn"
        data-hand={hand}
        className={styles.handleTurn}
        transform={`translate(${turnAt} 0)`}
      >
        <rect className={styles.handlePart} width={HANDLE.height} height={HANDLE.height} rx={4} />
        <path d="M2.4 4.8a2 2 0 1 1 3.4.2M5.9 5.2l-.2-1.1M5.9 5.2l1.1-.3" />
      </g>
    </g>
  );
}
