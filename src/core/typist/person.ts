import { GROUP_NAMES, GROUPS, type GroupName, type TypistParameters } from './parameters.ts';

/** Whose accidents are estimated: the population of typists at a speed. */
export interface Person {
  readonly parameters: TypistParameters;
  /** What a chord's spread is multiplied by: 1 skilled; 1.5 to 2 for novices is an assumption without a published figure. */
  readonly spreadFactor: number;
}

/** Speeds that can be asked for, words per minute. */
export const SLOWEST_WPM = 10;
export const FASTEST_WPM = 160;

/** A group of the sample at its mean speed. */
export function personOfGroup(group: GroupName, spreadFactor = 1): Person {
  return { parameters: GROUPS[group], spreadFactor };
}

/**
 * Typists of an exact speed: between two groups each parameter is interpolated over ln wpm (positive ones geometrically).
 * Beyond the slowest and the fastest group intervals go with 1 / wpm and the rest stays: an extrapolation.
 */
export function personAt(wpm: number, spreadFactor = 1): Person {
  const asked = Math.min(FASTEST_WPM, Math.max(SLOWEST_WPM, wpm));
  const groups = GROUP_NAMES.map((name) => GROUPS[name]);
  const above = groups.findIndex((group) => group.wpm >= asked);
  const upper = groups[above] ?? GROUPS.veryFast;
  if (above <= 0) return { parameters: beyond(upper, asked), spreadFactor };
  const lower = groups[above - 1] ?? GROUPS.slow;
  const part = Math.log(asked / lower.wpm) / Math.log(upper.wpm / lower.wpm);
  return { parameters: between(lower, upper, part), spreadFactor };
}

function beyond(group: TypistParameters, wpm: number): TypistParameters {
  const slower = group.wpm / wpm;
  const rarer = slower ** -group.beta;
  const share = (value: number) => Math.min(0.5, value * rarer);
  return {
    ...group,
    wpm,
    alphaMs: group.alphaMs * slower,
    within40: group.within40.map(share),
    within60: group.within60.map(share),
  };
}

function between(one: TypistParameters, other: TypistParameters, part: number): TypistParameters {
  const mix = (a: number, b: number) =>
    a > 0 && b > 0 ? a ** (1 - part) * b ** part : a * (1 - part) + b * part;
  const mixAll = (a: readonly number[], b: readonly number[]) =>
    a.map((value, at) => mix(value, b[at] ?? value));
  return {
    wpm: mix(one.wpm, other.wpm),
    alphaMs: mix(one.alphaMs, other.alphaMs),
    beta: mix(one.beta, other.beta),
    betweenLnIki: mix(one.betweenLnIki, other.betweenLnIki),
    dwellMeanMs: mix(one.dwellMeanMs, other.dwellMeanMs),
    dwellWithinMs: mix(one.dwellWithinMs, other.dwellWithinMs),
    dwellBetweenMs: mix(one.dwellBetweenMs, other.dwellBetweenMs),
    nested: mix(one.nested, other.nested),
    letterUpFirst: mix(one.letterUpFirst, other.letterUpFirst),
    letterToSpace: mix(one.letterToSpace, other.letterToSpace),
    spaceToLetter: mix(one.spaceToLetter, other.spaceToLetter),
    classRatio: mixAll(one.classRatio, other.classRatio),
    within40: mixAll(one.within40, other.within40),
    within60: mixAll(one.within60, other.within60),
    bandRatio: mixAll(one.bandRatio, other.bandRatio),
    bandWithin: mixAll(one.bandWithin, other.bandWithin),
  };
}
