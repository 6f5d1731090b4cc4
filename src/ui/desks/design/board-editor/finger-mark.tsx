import type { Finger, Hand } from '../../../../core/keymap/types.ts';
import styles from './canvas.module.css';

/** A right hand's fingers from the thumb outwards: how far each stands up, mm of a mark 5.4 mm wide. */
const BARS: readonly { readonly finger: Finger; readonly top: number; readonly height: number }[] = [
  { finger: 'thumb', top: 2.4, height: 1.8 },
  { finger: 'index', top: 0.6, height: 2.6 },
  { finger: 'middle', top: 0, height: 3.2 },
  { finger: 'ring', top: 0.5, height: 2.7 },
  { finger: 'little', top: 1.3, height: 1.9 },
];
const STEP = 1.2;
const WIDE = 0.75;

/** A hand as five strokes, the finger in question filled; its middle lies at the origin. */
export function FingerMark({ finger, hand }: { readonly finger: Finger; readonly hand: Hand }) {
  const sign = hand === 'right' ? 1 : -1;
  return (
    <g className={styles.mark}>
      {BARS.map((bar, index) => (
        <rect
          key={bar.finger}
          data-mine={bar.finger === finger}
          x={sign * (index - 2) * STEP - WIDE / 2}
          y={bar.top - 2.1}
          width={WIDE}
          height={bar.height}
          rx={WIDE / 2}
        />
      ))}
    </g>
  );
}
