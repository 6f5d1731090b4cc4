/** One point of a learning curve: a time in ms after so many practised presses. */
export interface CurvePoint {
  readonly practised: number;
  readonly ms: number;
}

/**
 * The power law of practice, time = a × practised^−b (Newell and Rosenbloom 1981, "Mechanisms of skill acquisition and the
 * law of practice"), fitted by least squares to the logarithms.
 */
export interface PowerLaw {
  readonly a: number;
  readonly b: number;
  /** Standard deviation of the logarithms around the line. */
  readonly spread: number;
  readonly points: number;
  readonly meanLog: number;
  /** Sum of squares of the logarithms of `practised` around their mean. */
  readonly sumOfSquares: number;
}

/** A predicted time with the bounds that one more point keeps within with 95 %, ms. */
export interface Predicted {
  readonly ms: number;
  readonly low: number;
  readonly high: number;
}

/**
 * With fewer points a learning curve cannot be predicted from (McMulkin and Kroemer 1992, on a chord keyboard: at least 50).
 */
export const LEAST_POINTS = 50;

/** Fits the law; null where there are fewer than three points or all lie at one place. */
export function fitPowerLaw(points: readonly CurvePoint[]): PowerLaw | null {
  const count = points.length;
  if (count < 3) return null;
  const xs = points.map(({ practised }) => Math.log(practised));
  const ys = points.map(({ ms }) => Math.log(ms));
  const meanLog = mean(xs);
  const meanTime = mean(ys);
  const sumOfSquares = xs.reduce((sum, x) => sum + (x - meanLog) ** 2, 0);
  if (sumOfSquares === 0) return null;
  const slope = xs.reduce((sum, x, at) => sum + (x - meanLog) * ((ys[at] ?? 0) - meanTime), 0) / sumOfSquares;
  const intercept = meanTime - slope * meanLog;
  const residuals = xs.reduce((sum, x, at) => sum + ((ys[at] ?? 0) - intercept - slope * x) ** 2, 0);
  return {
    a: Math.exp(intercept),
    b: -slope,
    spread: Math.sqrt(residuals / (count - 2)),
    points: count,
    meanLog,
    sumOfSquares,
  };
}

/**
 * The time after so much practice, with the prediction interval of a new point: the line's own doubt and the spread around
 * it, by Student's t. It holds as long as points scatter independently and the line goes on straight.
 */
export function predictedAt(law: PowerLaw, practised: number): Predicted {
  const x = Math.log(practised);
  const middle = Math.log(law.a) - law.b * x;
  const doubt = Math.sqrt(1 + 1 / law.points + (x - law.meanLog) ** 2 / law.sumOfSquares);
  const reach = studentQuantile(law.points - 2) * law.spread * doubt;
  return { ms: Math.exp(middle), low: Math.exp(middle - reach), high: Math.exp(middle + reach) };
}

/**
 * The 97.5 % point of Student's t for that many degrees of freedom: the expansion 26.7.5 of Abramowitz and Stegun, good to
 * three places from 5 on.
 */
export function studentQuantile(freedom: number): number {
  const z = 1.959963984540054;
  const terms = [
    (z ** 3 + z) / 4,
    (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96,
    (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384,
    (79 * z ** 9 + 776 * z ** 7 + 1482 * z ** 5 - 1920 * z ** 3 - 945 * z) / 92160,
  ];
  return terms.reduce((sum, term, at) => sum + term / freedom ** (at + 1), z);
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, value) => sum + value, 0) / values.length;
}
