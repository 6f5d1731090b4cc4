import type { BoardDraft } from '../../../../core/board/draft.ts';
import { middleOf } from '../../../../core/board/hand-work.ts';
import { distanceMm } from '../../../../core/board/point.ts';
import { FINGER_REACH_MM, homeOf } from '../../../../core/board/reach.ts';
import type { Guide } from '../../../../core/board/snap.ts';
import type { Board, KeyId } from '../../../../core/keymap/types.ts';
import type { Frame } from '../../../board/board-scene.ts';
import styles from './canvas.module.css';
import { useBoardWork } from './use-board-work.ts';

/** A guide runs on beyond the cap that fell onto it, so that it is seen. */
const BEYOND_MM = 16;

/** A line by which the key in hand fell into place. */
export function GuideLine({ guide: { from, to } }: { readonly guide: Guide }) {
  const length = distanceMm(from, to);
  const way = length === 0 ? { x: 0, y: 0 } : { x: (to.x - from.x) / length, y: (to.y - from.y) / length };
  return (
    <line
      className={styles.guide}
      x1={from.x - way.x * BEYOND_MM}
      y1={from.y - way.y * BEYOND_MM}
      x2={to.x + way.x * BEYOND_MM}
      y2={to.y + way.y * BEYOND_MM}
    />
  );
}

/** How far the finger of the first selected key goes from its home key. */
export function Reach({ board, selected }: { readonly board: Board; readonly selected: readonly KeyId[] }) {
  const first = board.keys.find(({ id }) => id === selected[0]);
  const home = first && homeOf(board, first);
  return home === undefined ? null : (
    <circle className={styles.reach} cx={home.x} cy={home.y} r={FINGER_REACH_MM} />
  );
}

/** Paper with a cross at every centimetre, so that the eye has a measure. */
export function MillimetrePaper({ frame }: { readonly frame: Frame }) {
  return (
    <>
      <defs>
        <pattern id="centimetres" width={10} height={10} patternUnits="userSpaceOnUse">
          <path className={styles.cross} d="M-0.8 0h1.6M0 -0.8v1.6M9.2 0h0.8M0 9.2v0.8" />
        </pattern>
      </defs>
      {/* Wide enough for any window's proportions. */}
      <rect
        x={frame.x - frame.width}
        y={frame.y - frame.height}
        width={frame.width * 3}
        height={frame.height * 3}
        fill="url(#centimetres)"
      />
    </>
  );
}

/** Above what is selected: drag it round to turn the keys about their middle. */
export function TurnHandle({
  draft,
  selected,
}: {
  readonly draft: BoardDraft;
  readonly selected: readonly KeyId[];
}) {
  const { alike } = useBoardWork();
  const all = selected.flatMap((id) => draft.board.keys.find((key) => key.id === id) ?? []);
  // With both halves alike the first key's hand leads, and the other one follows.
  const keys = alike ? all.filter(({ hand }) => hand === all[0]?.hand) : all;
  if (keys.length === 0) return null;
  const { x, y } = middleOf(keys);
  const top = Math.min(...keys.map((key) => key.y - Math.hypot(key.width, key.height) / 2)) - 3;
  return (
    // biome-ignore lint/a11y/noAriaHiddenOnFocusable: a group of shapes takes no focus
    <g data-grip="turn" className={styles.turn} aria-hidden="true">
      <line x1={x} y1={y} x2={x} y2={top} />
      <circle cx={x} cy={top - 2.6} r={2.6} />
      <path
        transform={`translate(${x - 4.1} ${top - 6.8})`}
        d="M2.8 4.8a1.5 1.5 0 1 1 2.5.2M5.4 5.2l-.2-.9M5.4 5.2l.9-.2"
      />
    </g>
  );
}
