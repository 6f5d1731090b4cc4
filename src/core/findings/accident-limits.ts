/** From where on accidents are worth a finding; rates per 1,000 words, durations in ms. */
export interface AccidentLimits {
  /** Misfires of a chord. */
  readonly chordPer1000Words: number;
  /** Misfires of a hold on a letter. */
  readonly holdPer1000Words: number;
  /** Share of uses, percent, in which a chord's keys come wider apart than its window. */
  readonly missedPercent: number;
  /** Mean wait of a letter until it appears. */
  readonly delayMs: number;
  /** How often a letter must be typed for its wait to count. */
  readonly frequentPer1000Words: number;
}

/**
 * Our choice, without a source: an accident in 500 words, about twice on a page, is noticed; 40 ms of waiting are too, on
 * letters that make up one in 100 or more.
 */
export const USUAL_LIMITS: AccidentLimits = {
  chordPer1000Words: 1,
  holdPer1000Words: 2,
  missedPercent: 10,
  delayMs: 40,
  frequentPer1000Words: 50,
};
