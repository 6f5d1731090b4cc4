import { logLogisticCdf, NODES, skewedCdf } from './distributions.ts';
import { AFTER_HOLD, ANY_LETTERS, FROM_THUMB, type IntervalKind, KINDS, TO_THUMB } from './pair-class.ts';
import { HOLD_LAG_MS, type TypistParameters } from './parameters.ts';

const OTHER_HAND = 2;
/** From here on the log-logistic holds without correction, ms. */
export const TAIL_END_MS = 120;
/** Intervals are looked up at every other ms up to this, and computed beyond. */
export const STEP_MS = 2;
export const STEPS = 301;
/** So many of them are corrected; the last of them is not any more. */
export const CORRECTED_STEPS = TAIL_END_MS / STEP_MS + 1;

/** Intervals between presses of typists at one speed: log-logistic, corrected where the measured tail is another. */
export class Intervals {
  readonly parameters: TypistParameters;
  private readonly tables: (readonly Float64Array[] | undefined)[] = Array(KINDS);
  private readonly factors: (Float64Array | undefined)[] = Array(KINDS);
  /** t to the power of minus beta at t = 0, 2, 4 … ms. */
  private readonly powers: Float64Array;
  private readonly afterHold = Float64Array.from({ length: STEPS }, (_, step) =>
    skewedCdf(step * STEP_MS, HOLD_LAG_MS),
  );

  constructor(parameters: TypistParameters) {
    this.parameters = parameters;
    this.powers = Float64Array.from({ length: STEPS }, (_, step) => (step * STEP_MS) ** -parameters.beta);
  }

  /** Scale of an interval for the median typist, ms. */
  alphaOf(kind: IntervalKind): number {
    const { alphaMs, classRatio, bandRatio, letterToSpace, spaceToLetter } = this.parameters;
    if (kind === TO_THUMB) return alphaMs * letterToSpace;
    if (kind === FROM_THUMB) return alphaMs * spaceToLetter;
    if (kind >= ANY_LETTERS) return alphaMs;
    const ratio = classRatio[kind >> 2] ?? 1;
    return alphaMs * ratio * (kind < 4 ? 1 : (bandRatio[kind & 3] ?? 1));
  }

  /** What the share within t of the log-logistic is multiplied by: measured over modelled at 40 and 60 ms, fading out. */
  private correction(kind: IntervalKind, t: number): number {
    if (t >= TAIL_END_MS) return 1;
    const at40 = this.factorAt(kind, 40);
    if (t <= 40) return at40;
    const at60 = this.factorAt(kind, 60);
    if (t <= 60) return at40 + ((at60 - at40) * Math.log(t / 40)) / Math.log(60 / 40);
    return at60 + ((1 - at60) * Math.log(t / 60)) / Math.log(TAIL_END_MS / 60);
  }

  private factorAt(kind: IntervalKind, t: 40 | 60): number {
    const { within40, within60, bandWithin, beta, betweenLnIki } = this.parameters;
    const isThumb = kind === TO_THUMB || kind === FROM_THUMB;
    if (kind >= ANY_LETTERS) return 1;
    // No tail was published for the thumb's keys: theirs is thought to be as far from the log-logistic as that of two hands.
    const base = isThumb ? OTHER_HAND * 4 + 2 : kind;
    const pairClass = base >> 2;
    const band = pairClass === OTHER_HAND ? (bandWithin[base & 3] ?? 1) : 1;
    const measured = ((t === 40 ? within40 : within60)[pairClass] ?? 0) * band;
    const alpha = this.alphaOf(base);
    const modelled = NODES.reduce(
      (sum, { z, weight }) => sum + weight * logLogisticCdf(t, alpha * Math.exp(betweenLnIki * z), beta),
      0,
    );
    return measured / modelled;
  }

  /** P(interval ≤ t) for a typist at a node of the population, t in ms. */
  within(kind: IntervalKind, node: number, t: number): number {
    if (t <= 0) return 0;
    const at = t / STEP_MS;
    if (at >= STEPS - 1) return this.tail(kind, node, t);
    const table = this.table(kind)[node];
    const low = Math.floor(at);
    const from = table?.[low] ?? 0;
    return from + ((table?.[low + 1] ?? 0) - from) * (at - low);
  }

  /** For each node, P(interval ≤ t) at t = 0, 2, 4 … ms. */
  table(kind: IntervalKind): readonly Float64Array[] {
    const known = this.tables[kind];
    if (known !== undefined) return known;
    const made = this.tablesFor(
      kind,
      NODES.map(({ z }) => z),
    );
    this.tables[kind] = made;
    return made;
  }

  /** The same for any typists, by their standard normal scores, over the first `steps` times. */
  tablesFor(kind: IntervalKind, scores: readonly number[], steps = STEPS): Float64Array[] {
    const { beta, betweenLnIki } = this.parameters;
    if (kind === AFTER_HOLD) return scores.map(() => this.afterHold.slice(0, steps));
    const factors = this.factorsOf(kind);
    return scores.map((z) => {
      const scale = (this.alphaOf(kind) * Math.exp(betweenLnIki * z)) ** beta;
      const table = new Float64Array(steps);
      let share = 0;
      for (let step = 1; step < steps; step++) {
        // A share never falls as time goes on, whatever the correction does.
        share = Math.max(share, Math.min(1, (factors[step] ?? 1) / (1 + scale * (this.powers[step] ?? 0))));
        table[step] = share;
      }
      return table;
    });
  }

  private factorsOf(kind: IntervalKind): Float64Array {
    const known = this.factors[kind];
    if (known !== undefined) return known;
    const made = Float64Array.from({ length: CORRECTED_STEPS }, (_, step) =>
      this.correction(kind, step * STEP_MS),
    );
    this.factors[kind] = made;
    return made;
  }

  private tail(kind: IntervalKind, node: number, t: number): number {
    if (kind === AFTER_HOLD) return skewedCdf(t, HOLD_LAG_MS);
    const { beta, betweenLnIki } = this.parameters;
    const z = NODES[node]?.z ?? 0;
    return logLogisticCdf(t, this.alphaOf(kind) * Math.exp(betweenLnIki * z), beta);
  }
}
