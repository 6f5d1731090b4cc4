import { boardExtent, capCorners } from '../../../../core/board/caps.ts';
import type { Board, KeyId } from '../../../../core/keymap/types.ts';
import styles from './suggest.module.css';

/** Room around the caps, mm. */
const MARGIN = 4;

/** A small picture of the board with a chord's keys filled; for the eye alone. */
export function LitBoard({ board, keys }: { readonly board: Board; readonly keys: readonly KeyId[] }) {
  const { minX, minY, maxX, maxY } = boardExtent(board);
  return (
    <svg
      className={styles.picture}
      viewBox={`${minX - MARGIN} ${minY - MARGIN} ${maxX - minX + 2 * MARGIN} ${maxY - minY + 2 * MARGIN}`}
      aria-hidden="true"
    >
      {board.keys.map((key) => (
        <polygon
          key={key.id}
          data-lit={keys.includes(key.id)}
          points={capCorners(key)
            .map(({ x, y }) => `${x},${y}`)
            .join(' ')}
        />
      ))}
    </svg>
  );
}
