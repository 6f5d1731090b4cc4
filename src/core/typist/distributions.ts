/** Nodes and weights for the mean of a function of a standard normal: Gauss-Hermite, five points (Abramowitz and Stegun, table 25.10). */
export const NODES: readonly { readonly z: number; readonly weight: number }[] = [
  { z: -2.856970013872806, weight: 0.011257411327720691 },
  { z: -1.355626179974266, weight: 0.2220759220056126 },
  { z: 0, weight: 0.5333333333333333 },
  { z: 1.355626179974266, weight: 0.2220759220056126 },
  { z: 2.856970013872806, weight: 0.011257411327720691 },
];

/** P(T ≤ t) of a log-logistic time; t and alpha in ms. */
export function logLogisticCdf(t: number, alpha: number, beta: number): number {
  return t <= 0 ? 0 : 1 / (1 + (alpha / t) ** beta);
}

/** The time below which a share u lies, ms. */
export function logLogisticQuantile(u: number, alpha: number, beta: number): number {
  return alpha * (u / (1 - u)) ** (1 / beta);
}

/** P(Z ≤ z) of a standard normal; error under 1.2e-7 (the rational erfc of Numerical Recipes, 6.2). */
export function normalCdf(z: number): number {
  const x = Math.abs(z) / Math.SQRT2;
  const t = 1 / (1 + x / 2);
  const poly = [
    -1.26551223, 1.00002368, 0.37409196, 0.09678418, -0.18628806, 0.27886807, -1.13520398, 1.48851587,
    -0.82215223, 0.17087277,
  ].reduceRight((sum, coefficient) => sum * t + coefficient, 0);
  const tail = (t * Math.exp(-x * x + poly)) / 2;
  return z < 0 ? tail : 1 - tail;
}

/** P(T > t) of a gamma time of that mean and SD: the regularised incomplete gamma function, by series or continued fraction. */
export function gammaSurvival(t: number, mean: number, sd: number): number {
  if (t <= 0) return 1;
  const shape = (mean / sd) ** 2;
  const x = (t * mean) / (sd * sd);
  const front = Math.exp(-x + shape * Math.log(x) - logGamma(shape));
  return x < shape + 1 ? 1 - front * lowerSeries(shape, x) : front * upperFraction(shape, x);
}

function lowerSeries(shape: number, x: number): number {
  let term = 1 / shape;
  let sum = term;
  for (let n = 1; n < 500 && term > sum * 1e-12; n++) {
    term *= x / (shape + n);
    sum += term;
  }
  return sum;
}

/** Lentz's way through the continued fraction. */
function upperFraction(shape: number, x: number): number {
  let b = x + 1 - shape;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let n = 1; n < 500; n++) {
    const a = -n * (n - shape);
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    const step = d * c;
    h *= step;
    if (Math.abs(step - 1) < 1e-12) break;
  }
  return h;
}

/** ln Γ, Stirling's series after shifting the argument up. */
function logGamma(x: number): number {
  let shift = 0;
  let y = x;
  while (y < 12) shift -= Math.log(y++);
  return shift + (y - 0.5) * Math.log(y) - y + 0.9189385332046727 + 1 / (12 * y) - 1 / (360 * y ** 3);
}

/** Three quantiles (5, 50, 95 %) as a time whose logarithm is normal on either side of the median. */
export type Quantiles = readonly [low: number, middle: number, high: number];

const Z95 = 1.6448536269514722;

/** P(T ≤ t). */
export function skewedCdf(t: number, [low, middle, high]: Quantiles): number {
  if (t <= 0) return 0;
  const side = t < middle ? Math.log(middle / low) : Math.log(high / middle);
  return normalCdf((Math.log(t / middle) * Z95) / side);
}

/** The time at a standard normal score. */
export function skewedAt(z: number, [low, middle, high]: Quantiles): number {
  const side = z < 0 ? Math.log(middle / low) : Math.log(high / middle);
  return middle * Math.exp((z * side) / Z95);
}
