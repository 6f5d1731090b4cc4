import styles from './interval-rows.module.css';

/** A figure with its interval, and another to compare it with. */
export interface IntervalRow {
  readonly name: string;
  readonly value: number;
  readonly low: number;
  readonly high: number;
  readonly other: number;
  readonly count: number;
}

const WIDTH = 160;
const HEIGHT = 20;

/** Figures one under the other: a dot with its interval as a line, a stroke where the other stands, and the number. */
export function IntervalRows({
  title,
  otherName,
  rows,
  textOf,
}: {
  readonly title: string;
  /** What the stroke stands for. */
  readonly otherName: string;
  readonly rows: readonly IntervalRow[];
  readonly textOf: (value: number) => string;
}) {
  const all = rows.flatMap(({ low, high, value, other }) => [low, high, value, other]);
  const from = Math.min(...all);
  const to = Math.max(...all);
  const x = (value: number) => 6 + ((value - from) / Math.max(1e-9, to - from)) * (WIDTH - 12);
  return (
    <table className={styles.table}>
      <caption>{title}</caption>
      <thead className={styles.hidden}>
        <tr>
          <th scope="col">which</th>
          <th scope="col">interval</th>
          <th scope="col">you</th>
          <th scope="col">seen</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, value, low, high, other, count }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td>
              <svg viewBox={`0 0 ${WIDTH} ${HEIGHT}`} aria-hidden="true">
                <path className={styles.other} d={`M${x(other)} 3V17`} />
                <path className={styles.line} d={`M${x(low)} 10H${x(high)}`} />
                <circle className={styles.dot} cx={x(value)} cy="10" r="3.5" />
              </svg>
              <span className={styles.hidden}>
                between {textOf(low)} and {textOf(high)}; {otherName} {textOf(other)}
              </span>
            </td>
            <td className={styles.number}>{textOf(value)}</td>
            <td className={styles.count}>{count}×</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
