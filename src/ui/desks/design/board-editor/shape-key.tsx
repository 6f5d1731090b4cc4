import { memo } from 'react';
import type { BoardKey } from '../../../../core/keymap/types.ts';
import { fitText } from '../../../board/fit-text.ts';
import styles from './canvas.module.css';
import { FingerMark } from './finger-mark.tsx';

interface ShapeKeyProps {
  readonly shape: BoardKey;
  /** What its key of the design types on the base layer; "" for none. */
  readonly legend: string;
  readonly selected: boolean;
  /** The mirror image of a selected key, which goes along with it. */
  readonly follows: boolean;
  /** No key of the design. */
  readonly isNew: boolean;
  /** It overlaps another cap, or lies out of reach. */
  readonly wrong: boolean;
}

/** A cap of a board that is being worked on: whose finger it is, whether home, and what is bound on it. */
export const ShapeKey = memo(function ShapeKey(props: ShapeKeyProps) {
  const { shape, legend, selected, follows, isNew, wrong } = props;
  const { width, height } = shape;
  return (
    <g
      className={styles.shape}
      transform={`translate(${shape.x} ${shape.y}) rotate(${shape.rotation})`}
      data-shape={shape.id}
      data-selected={selected}
      data-follows={follows}
      data-new={isNew}
      data-wrong={wrong}
    >
      <rect className={styles.cap} x={-width / 2} y={-height / 2} width={width} height={height} rx={2.6} />
      <g transform={`translate(0 ${legend === '' ? 0 : 2.8}) scale(1.35)`}>
        <FingerMark finger={shape.finger} hand={shape.hand} />
      </g>
      {legend !== '' && <Legend text={legend} width={width} />}
      {isNew && <circle className={styles.newDot} cx={width / 2 - 2.6} cy={-height / 2 + 2.6} r={0.9} />}
      {wrong && (
        <text className={styles.wrongSign} x={-width / 2 + 2.8} y={-height / 2 + 3} fontSize={4}>
          !
        </text>
      )}
      {shape.home && (
        <rect className={styles.home} x={-2.6} y={height / 2 - 1.15} width={5.2} height={0.7} rx={0.35} />
      )}
    </g>
  );
});

function Legend({ text, width }: { readonly text: string; readonly width: number }) {
  const { lines, size } = fitText(text, { width: width - 4, height: 4.6, most: 4.2, least: 2 });
  return (
    <text className={styles.legend} y={-3.8} fontSize={size}>
      {lines.join(' ')}
    </text>
  );
}
