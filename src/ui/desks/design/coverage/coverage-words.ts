import { COST_CLASSES } from '../../../../core/coverage/cost-class.ts';
import type { CostlyNeed } from '../../../../core/coverage/costliest.ts';
import type { ListCoverage } from '../../../../core/coverage/coverage.ts';
import type { TextLoad } from '../../../../core/coverage/text-load.ts';
import { costWords } from '../needs/cost-words.ts';

/** What a list is counted in. */
export type CountedIn = 'needs' | 'characters';

/** One stretch of a list's bar. */
export interface Stretch {
  readonly name: string;
  readonly count: number;
  /** Of the whole bar, 0 to 1. */
  readonly share: number;
}

/** The stretches of a list's bar: the cost classes in their order, then what is missing; empty ones are left out. */
export function stretchesOf(list: ListCoverage): readonly Stretch[] {
  const all = [
    ...COST_CLASSES.map((name) => ({ name, count: list.classes[name] })),
    { name: 'missing', count: list.missing },
  ];
  return all
    .filter(({ count }) => count > 0)
    .map(({ name, count }) => ({ name, count, share: count / list.total }));
}

/** How a list stands in a line: "90 of 97 reached, 3 of them clumsy, 7 missing". */
export function standingWords(list: ListCoverage, countedIn: CountedIn): string {
  if (list.total === 0) return 'Nothing of it stands in your text.';
  const clumsy = list.clumsy === 0 ? [] : [`${plain(list.clumsy)} of them clumsy`];
  const missing = list.missing === 0 ? [] : [`${plain(list.missing)} missing`];
  const first =
    countedIn === 'needs'
      ? `${plain(list.reached)} of ${plain(list.total)} reached`
      : `${percent(list.reached / list.total)} of ${plain(list.total)} characters reached`;
  return [first, ...clumsy, ...missing].join(', ');
}

/** The bar of a list in words, for those who don't see it. */
export function barWords(list: ListCoverage): string {
  return stretchesOf(list)
    .map(({ name, count }) => `${name}: ${plain(count)}`)
    .join(', ');
}

/** A number as it is read: thousands set apart. */
export function plain(count: number): string {
  return count.toLocaleString('en');
}

/** A share of 1 as a percentage, one digit after the point; nothing at all is "0 %", and very little "< 0.1 %". */
export function percent(share: number): string {
  if (share === 0) return '0 %';
  return share < 0.0005 ? '< 0.1 %' : `${(share * 100).toFixed(1)} %`;
}

/** What a need costs; with a text, how often it stands there too. */
export function costlyWords({ route, count, extraPresses }: CostlyNeed, hasText: boolean): string {
  const once = costWords(route);
  return hasText ? `${once}; ${plain(count)} times: ${plain(extraPresses)} presses beyond one each` : once;
}

/** The figures of the own text, a line each: what is counted, then the number. */
export function loadRows(load: TextLoad): readonly (readonly [string, string])[] {
  return [
    ['Presses per character', load.pressesPerChar.toFixed(2)],
    ['of them held', load.holdsPerChar.toFixed(2)],
    ['Characters that can be typed', percent(load.total === 0 ? 0 : load.typed / load.total)],
    ['Neighbours on two keys of one finger', percent(load.sameFingerPairs)],
  ];
}
