import { boardExtent } from '../../../../core/board/caps.ts';
import type { Overlay } from '../../../../core/board/overlay.ts';
import { codeLabel } from '../../../../core/host/code-names.ts';
import { isCode } from '../../../../core/keymap/codes.ts';
import type { Board, KeyId } from '../../../../core/keymap/types.ts';
import styles from './overlay.module.css';

const MARGIN = 2;

/** The board with the key of the keyboard at hand on each cap; with `onPick` a cap can be chosen. */
export function OverlayBoard({
  board,
  overlay,
  picked = null,
  down = [],
  onPick,
}: {
  readonly board: Board;
  readonly overlay: Overlay;
  readonly picked?: KeyId | null;
  /** Keys that are down. */
  readonly down?: readonly KeyId[];
  readonly onPick?: (key: KeyId) => void;
}) {
  const codes = new Map(Object.entries(overlay.keys).map(([code, key]) => [key, code]));
  const { minX, minY, maxX, maxY } = boardExtent(board);
  const box = [minX - MARGIN, minY - MARGIN, maxX - minX + 2 * MARGIN, maxY - minY + 2 * MARGIN];
  return (
    <svg className={styles.board} viewBox={box.join(' ')} role="img" aria-label="Which key stands for which">
      {board.keys.map(({ id, x, y, width: w, height: h, rotation }) => (
        <g key={id} transform={`translate(${x} ${y}) rotate(${rotation})`}>
          <rect
            className={styles.cap}
            data-picked={picked === id}
            data-down={down.includes(id)}
            data-can-pick={onPick !== undefined}
            x={-w / 2}
            y={-h / 2}
            width={w}
            height={h}
            rx={2.5}
            onPointerDown={onPick === undefined ? undefined : () => onPick(id)}
          />
          <text
            className={styles.code}
            textAnchor="middle"
            dominantBaseline="central"
            fontSize={fontMm(codes.get(id))}
          >
            {label(codes.get(id))}
          </text>
        </g>
      ))}
    </svg>
  );
}

function label(code: string | undefined): string {
  return code !== undefined && isCode(code) ? codeLabel(code) : '';
}

function fontMm(code: string | undefined): number {
  return label(code).length > 2 ? 5.5 : 8;
}
