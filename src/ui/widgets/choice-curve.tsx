import styles from './choice-curve.module.css';

/** One of the two lines: what it counts, and its value at the choice in words. */
interface Line {
  readonly label: string;
  readonly value: string;
  /** The scale reaches so high at least, so that next to nothing looks like next to nothing. */
  readonly least: number;
}

interface ChoiceCurveProps {
  /** Read out in place of the picture. */
  readonly label: string;
  /** By x, ascending; each line has a scale of its own from 0 to its highest point. */
  readonly points: readonly { readonly x: number; readonly solid: number; readonly dashed: number }[];
  /** The choice as it is. */
  readonly now: { readonly x: number; readonly solid: number; readonly dashed: number };
  readonly suggested: { readonly x: number; readonly label: string } | null;
  readonly solid: Line;
  readonly dashed: Line;
  /** The unit of x. */
  readonly unit: string;
}

const WIDTH = 240;
const HEIGHT = 88;
/** Room below for the ends of the scale. */
const BELOW = 12;
/** Room above for the suggestion's label. */
const TOP = 16;

/** Two lines over one choice, such as misfires (solid) and misses (dashed), with the choice as it is and the suggested one marked. */
export function ChoiceCurve({ label, points, now, suggested, solid, dashed, unit }: ChoiceCurveProps) {
  const from = points[0]?.x ?? 0;
  const to = points.at(-1)?.x ?? 1;
  const across = (x: number) => (WIDTH * (Math.min(to, Math.max(from, x)) - from)) / Math.max(1, to - from);
  const mostSolid = Math.max(solid.least, ...points.map((point) => point.solid));
  const mostDashed = Math.max(dashed.least, ...points.map((point) => point.dashed));
  const up = (share: number) => TOP + (HEIGHT - TOP - 2) * (1 - share);
  const line = (of: 'solid' | 'dashed', most: number) =>
    points.map((point) => `${across(point.x).toFixed(1)},${up(point[of] / most).toFixed(1)}`).join(' ');
  const x = across(now.x);
  return (
    <div className={styles.curve}>
      <svg
        viewBox={`-6 0 ${WIDTH + 12} ${HEIGHT + BELOW}`}
        role="img"
        aria-label={label}
        className={styles.picture}
      >
        <line className={styles.ground} x1={0} x2={WIDTH} y1={HEIGHT} y2={HEIGHT} />
        <text className={styles.end} x={0} y={HEIGHT + 10}>
          {from} {unit}
        </text>
        <text className={styles.end} x={WIDTH} y={HEIGHT + 10} textAnchor="end">
          {to} {unit}
        </text>
        {suggested !== null && <Suggested x={across(suggested.x)} label={suggested.label} />}
        <line className={styles.now} x1={x} x2={x} y1={TOP} y2={HEIGHT} />
        <polyline className={styles.dashed} points={line('dashed', mostDashed)} />
        <polyline className={styles.solid} points={line('solid', mostSolid)} />
        <circle className={styles.dashedDot} cx={x} cy={up(now.dashed / mostDashed)} r={4} />
        <circle className={styles.solidDot} cx={x} cy={up(now.solid / mostSolid)} r={4} />
      </svg>
      <dl className={styles.legend}>
        <LegendLine line={solid} look="solid" />
        <LegendLine line={dashed} look="dashed" />
      </dl>
    </div>
  );
}

function Suggested({ x, label }: { readonly x: number; readonly label: string }) {
  const anchor = x < WIDTH * 0.2 ? 'start' : x > WIDTH * 0.8 ? 'end' : 'middle';
  return (
    <g>
      <line className={styles.suggested} x1={x} x2={x} y1={TOP} y2={HEIGHT} />
      <text className={styles.mark} x={x} y={11} textAnchor={anchor}>
        {label}
      </text>
    </g>
  );
}

function LegendLine({ line, look }: { readonly line: Line; readonly look: 'solid' | 'dashed' }) {
  return (
    <div>
      <dt>
        <svg viewBox="0 0 20 8" className={styles.sample} aria-hidden="true">
          <line className={styles[look]} x1={0} x2={20} y1={4} y2={4} />
        </svg>
        {line.label}
      </dt>
      <dd>{line.value}</dd>
    </div>
  );
}
