import type { Layer } from '../../core/keymap/types.ts';

/** A rung that may be shown or hidden; the base layer has none to choose. */
export interface RungOption {
  readonly value: string;
  readonly label: string;
  readonly number: number;
}

/** The rungs of a design, lowest first. */
export function rungOptions(layers: readonly Pick<Layer, 'id' | 'name'>[]): readonly RungOption[] {
  return layers.map(({ id, name }, number) => ({ value: id, label: `${number} ${name}`, number })).slice(1);
}

/**
 * The numbers that are hidden once the options of these values are shown: numbers beyond this design's layers stay as
 * they were, since a taller design may have them.
 */
export function hiddenAfter(
  options: readonly RungOption[],
  shown: readonly string[],
  before: readonly number[],
): readonly number[] {
  const beyond = before.filter((hidden) => !options.some(({ number }) => number === hidden));
  return [...options.filter(({ value }) => !shown.includes(value)).map(({ number }) => number), ...beyond];
}
