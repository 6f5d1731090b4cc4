/**
 * By what factor an estimate may be off either way: the worst of 90 checks of the closed form against a replay of what
 * people typed was off by 1.99 (`public/typist.md`). For other people, boards and texts it may be more.
 */
export const OFF_BY = 2;

/** Rates under this, per 1,000, are as good as never. Our choice. */
const NEVER = 0.05;

/** A rate as a person says it: "about 3", "about 0.4", "practically never". */
export function rateInWords(rate: number): string {
  return rate < NEVER ? 'practically never' : `about ${plainNumber(rate)}`;
}

/** Between what it may lie: "between 1.5 and 6"; empty where it is as good as never. */
export function rangeInWords(rate: number): string {
  return rate < NEVER ? '' : `between ${plainNumber(rate / OFF_BY)} and ${plainNumber(rate * OFF_BY)}`;
}

/** How often in 1,000 words, and how sure that is: "about 3 times in 1,000 words (between 1.5 and 6)". */
export function oftenInWords(rate: number): string {
  const range = rangeInWords(rate);
  const times = plainNumber(rate) === '1' ? 'time' : 'times';
  return range === '' ? rateInWords(rate) : `${rateInWords(rate)} ${times} in 1,000 words (${range})`;
}

/** No more figures than the estimate is worth: whole tens from 100 on, whole ones from 10 on, else one decimal. */
export function plainNumber(value: number): string {
  if (value >= 1000) return (Math.round(value / 100) * 100).toLocaleString('en');
  if (value >= 100) return String(Math.round(value / 10) * 10);
  if (value >= 10) return String(Math.round(value));
  if (value >= 0.95) return String(Math.round(value * 10) / 10);
  return String(Math.max(0.1, Math.round(value * 10) / 10));
}
