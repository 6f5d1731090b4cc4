import type { Forecast, ReachedPoint } from '../../../core/practice/forecast.ts';
import { curveLabel, timeLabel } from './plot-words.ts';
import styles from './plots.module.css';
import { roundTicks, scaleOf } from './scale.ts';

const WIDTH = 288;
const HEIGHT = 168;
const LEFT = 38;
const RIGHT = 8;
const TOP = 10;
const FOOT = 22;

/** Times of a group over the days, a point for ten presses, and ahead of now the band of the forecast. */
export function CurvePlot({
  points,
  forecast,
  title,
  now,
}: {
  readonly points: readonly ReachedPoint[];
  readonly forecast: Forecast;
  readonly title: string;
  readonly now: number;
}) {
  const days = forecast.state === 'band' ? forecast.days : [];
  const from = points[0]?.at ?? now;
  const to = Math.max(points.at(-1)?.at ?? now, days.at(-1)?.at ?? 0);
  const most = Math.max(...points.map(({ ms }) => ms), ...days.map(({ high }) => high), 100);
  const ticks = roundTicks(most);
  const x = scaleOf([from, to], [LEFT, WIDTH - RIGHT]);
  const y = scaleOf([0, ticks.at(-1) ?? 1], [HEIGHT - FOOT, TOP]);
  const place = (at: number, ms: number) => `${x(at).toFixed(1)},${y(ms).toFixed(1)}`;
  const band = [
    ...days.map(({ at, high }) => place(at, high)),
    ...days.toReversed().map(({ at, low }) => place(at, low)),
  ];
  return (
    <svg
      className={styles.plot}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={curveLabel(title, points, forecast)}
    >
      {ticks.map((tick) => (
        <g key={tick}>
          <line className={styles.grid} x1={LEFT} x2={WIDTH - RIGHT} y1={y(tick)} y2={y(tick)} />
          <text className={styles.yLabel} x={LEFT - 6} y={y(tick)}>
            {tick}
          </text>
        </g>
      ))}
      {band.length > 0 && <polygon className={styles.band} points={band.join(' ')} />}
      {days.length > 0 && (
        <polyline className={styles.line} points={days.map(({ at, ms }) => place(at, ms)).join(' ')} />
      )}
      {days.length > 0 && <line className={styles.now} x1={x(now)} x2={x(now)} y1={TOP} y2={HEIGHT - FOOT} />}
      {points.map(({ at, ms, practised }) => (
        <circle key={practised} className={styles.point} cx={x(at)} cy={y(ms)} r={2.2} />
      ))}
      <text className={styles.xLabel} x={LEFT} y={HEIGHT - 6} data-end="start">
        {timeLabel(from, to - from)}
      </text>
      {timeLabel(to, to - from) !== timeLabel(from, to - from) && (
        <text className={styles.xLabel} x={WIDTH - RIGHT} y={HEIGHT - 6} data-end="end">
          {timeLabel(to, to - from)}
        </text>
      )}
      {days.length > 0 && x(now) > LEFT + 60 && x(now) < WIDTH - 70 && (
        <text className={styles.xLabel} x={x(now)} y={HEIGHT - 6} data-end="middle">
          today
        </text>
      )}
    </svg>
  );
}
