import { shareOf } from '../../../core/practice/estimates.ts';
import { errorsLabel } from './plot-words.ts';
import styles from './plots.module.css';
import { roundTicks, scaleOf } from './scale.ts';

const WIDTH = 288;
const HEIGHT = 120;
const LEFT = 38;
const RIGHT = 8;
const TOP = 10;
const FOOT = 8;
/** More sessions do not fit; the last ones are shown. */
const MOST = 24;

/** How many tries of a session there were, and how many of them were wrong at first. */
export interface SessionErrors {
  readonly at: number;
  readonly tries: number;
  readonly wrong: number;
}

/** The share of wrong tries session by session, each with the bar within which it likely lies. */
export function ErrorsPlot({
  sessions,
  title,
}: {
  readonly sessions: readonly SessionErrors[];
  readonly title: string;
}) {
  const shown = sessions.slice(-MOST).map((each) => ({ ...each, share: shareOf(each.wrong, each.tries) }));
  const most = Math.max(...shown.map(({ share }) => (share.high ?? share.value) * 100), 10);
  const ticks = roundTicks(Math.min(100, most));
  const y = scaleOf([0, ticks.at(-1) ?? 100], [HEIGHT - FOOT, TOP]);
  const x = scaleOf([-0.5, Math.max(shown.length, 6) - 0.5], [LEFT, WIDTH - RIGHT]);
  return (
    <svg
      className={styles.plot}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={errorsLabel(title, sessions)}
    >
      {ticks.map((tick) => (
        <g key={tick}>
          <line className={styles.grid} x1={LEFT} x2={WIDTH - RIGHT} y1={y(tick)} y2={y(tick)} />
          <text className={styles.yLabel} x={LEFT - 6} y={y(tick)}>
            {tick}
          </text>
        </g>
      ))}
      {shown.map(({ at, share }, index) => (
        <g key={at}>
          <line
            className={styles.doubt}
            x1={x(index)}
            x2={x(index)}
            y1={y((share.low ?? 0) * 100)}
            y2={y((share.high ?? 1) * 100)}
          />
          <circle className={styles.point} cx={x(index)} cy={y(share.value * 100)} r={2.6} />
        </g>
      ))}
    </svg>
  );
}
