import { boardExtent, capCorners } from '../../core/board/caps.ts';
import type { Board } from '../../core/keymap/types.ts';
import styles from './board-picture.module.css';

/** Room around the caps, mm. */
const MARGIN = 4;

/** A small picture of a board's caps, to scale. `mmWide` makes pictures of several boards comparable. */
export function BoardPicture({ board, mmWide }: { readonly board: Board; readonly mmWide?: number }) {
  const { minX, minY, maxX, maxY } = boardExtent(board);
  const width = Math.max(mmWide ?? 0, maxX - minX) + 2 * MARGIN;
  const left = (minX + maxX - width) / 2;
  const height = maxY - minY + 2 * MARGIN;
  return (
    <svg
      className={styles.picture}
      viewBox={`${left} ${minY - MARGIN} ${width} ${height}`}
      aria-hidden="true"
    >
      {board.keys.map((key) => (
        <polygon
          key={key.id}
          className={key.home ? styles.home : styles.cap}
          points={capCorners(key)
            .map(({ x, y }) => `${x},${y}`)
            .join(' ')}
        />
      ))}
    </svg>
  );
}
