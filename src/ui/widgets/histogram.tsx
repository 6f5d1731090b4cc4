import styles from './histogram.module.css';

export interface HistogramProps {
  readonly title: string;
  /** What the steps are measured in, and how wide one is. */
  readonly unit: string;
  readonly step: number;
  readonly counts: readonly number[];
  /** What a curve through the middle of each step stands for; the same length. */
  readonly expected: readonly number[];
  /** What is to be seen, in a sentence for those who don't see it. */
  readonly summary: string;
}

const WIDTH = 320;
const HEIGHT = 120;
const FOOT = 20;
/** About so many numbers stand under the axis. */
const TICKS = 6;

/** Counts as bars and what a model expects as a curve over them. */
export function Histogram({ title, unit, step, counts, expected, summary }: HistogramProps) {
  const most = Math.max(1, ...counts, ...expected);
  const wide = WIDTH / Math.max(1, counts.length);
  const up = (value: number) => HEIGHT - (value / most) * (HEIGHT - 8);
  const curve = expected.map((value, at) => `${((at + 0.5) * wide).toFixed(1)} ${up(value).toFixed(1)}`);
  return (
    <figure className={styles.figure}>
      <figcaption>{title}</figcaption>
      <svg viewBox={`-8 0 ${WIDTH + 24} ${HEIGHT + FOOT}`} aria-hidden="true">
        {counts.map((count, at) => (
          <rect
            // biome-ignore lint/suspicious/noArrayIndexKey: a bar is its place on the axis
            key={at}
            className={styles.bar}
            x={at * wide + 0.5}
            y={up(count)}
            width={Math.max(0.5, wide - 1)}
            height={HEIGHT - up(count)}
          />
        ))}
        <path className={styles.curve} d={`M${curve.join('L')}`} />
        <path className={styles.axis} d={`M0 ${HEIGHT}H${WIDTH}`} />
        {ticksOf(counts.length * step).map((tick) => (
          <text key={tick} className={styles.tick} x={(tick / step) * wide} y={HEIGHT + 14}>
            {tick}
          </text>
        ))}
        <text className={styles.unit} x={WIDTH + 14} y={HEIGHT + 14}>
          {unit}
        </text>
      </svg>
      <p className={styles.hidden}>{summary}</p>
    </figure>
  );
}

/** Round numbers from 0 on, the last of them short of the end, where the unit stands. */
function ticksOf(end: number): readonly number[] {
  const step = [10, 20, 25, 50, 100, 200, 250, 500].find((each) => end / each <= TICKS) ?? end;
  return Array.from({ length: Math.ceil(end / step) }, (_, at) => at * step);
}
