import { logLogisticCdf, NODES, skewedCdf } from './distributions.ts';
import { AFTER_HOLD, ANY_LETTERS, FROM_THUMB, type IntervalKind, KINDS, TO_THUMB } from './pair-class.ts';
import { HOLD_LAG_MS, type TypistParameters } from './parameters.ts';

const OTHER_HAND = 2;
/** From here on the log-logistic holds without correction, ms. */
const TAIL_END_MS = 120;
/** Intervals are looked up at every other ms up to this, and computed beyond. */
export const STEP_MS = 2;
export const STEPS = 301;

/** Intervals between presses of typists at one speed: log-logistic, corrected where the measured tail is another. */
export class Intervals {
  readonly parameters: TypistParameters;
  private readonly tables: (readonly Float64Array[] | undefined)[] = Array(KINDS);

  constructor(parameters: TypistParameters) {
    this.parameters = parameters;
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

  /** The same for any typists, by their standard normal scores. */
  tablesFor(kind: IntervalKind, scores: readonly number[]): Float64Array[] {
    const { beta, betweenLnIki } = this.parameters;
    const alpha = this.alphaOf(kind);
    const factors = Float64Array.from({ length: STEPS }, (_, step) =>
      kind === AFTER_HOLD ? 1 : this.correction(kind, step * STEP_MS),
    );
    return scores.map((z) => {
      const own = alpha * Math.exp(betweenLnIki * z);
      const table = new Float64Array(STEPS);
      for (let step = 1; step < STEPS; step++) {
        const t = step * STEP_MS;
        const plain = kind === AFTER_HOLD ? skewedCdf(t, HOLD_LAG_MS) : logLogisticCdf(t, own, beta);
        // A share never falls as time goes on, whatever the correction does.
        table[step] = Math.max(table[step - 1] ?? 0, Math.min(1, plain * (factors[step] ?? 1)));
      }
      return table;
    });
  }

  private tail(kind: IntervalKind, node: number, t: number): number {
    if (kind === AFTER_HOLD) return skewedCdf(t, HOLD_LAG_MS);
    const { beta, betweenLnIki } = this.parameters;
    const z = NODES[node]?.z ?? 0;
    return logLogisticCdf(t, this.alphaOf(kind) * Math.exp(betweenLnIki * z), beta);
  }
}
