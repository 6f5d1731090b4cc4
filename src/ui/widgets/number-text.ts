/** What a number may be: its limits, and the step from one to the next. */
export interface NumberLimits {
  readonly min: number;
  readonly max: number;
  readonly step: number;
}

/** The number nearest to the given one that lies within the limits and on a step counted from `min`. */
export function fitted(value: number, { min, max, step }: NumberLimits): number {
  const onStep = min + Math.round((value - min) / step) * step;
  const digits = (String(step).split('.')[1] ?? '').length;
  return Number(Math.min(max, Math.max(min, onStep)).toFixed(digits));
}

/**
 * Reads what was typed into a number field, with a point or a comma; the sentence says what is wrong with it.
 * A number off the steps is taken as it is: steps are a convenience of the arrows.
 */
export function readNumber(
  text: string,
  { min, max }: NumberLimits,
): { readonly value: number } | { readonly problem: string } {
  const value = Number(text.trim().replace(',', '.'));
  if (text.trim() === '' || !Number.isFinite(value)) return { problem: 'A number is expected here.' };
  if (value < min || value > max) return { problem: `From ${min} to ${max}.` };
  return { value };
}
