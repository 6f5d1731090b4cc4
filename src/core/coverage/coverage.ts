import { type Need, needText } from '../keymap/need.ts';
import type { NeedRoute } from '../routes/types.ts';
import { type CostClass, costClassOf } from './cost-class.ts';

/** A need list with the way to each of its needs, as far as there is one. */
export interface CoveredList {
  readonly name: string;
  readonly title: string;
  readonly needs: readonly NeedRoute[];
}

/** How a need list stands on a design: numbers of needs, or of characters where the needs are weighted by a text. */
export interface ListCoverage {
  readonly name: string;
  readonly title: string;
  readonly total: number;
  readonly reached: number;
  readonly clumsy: number;
  readonly missing: number;
  readonly classes: Readonly<Record<CostClass, number>>;
  /** The needs that are missing, as they are written in a keymap. */
  readonly missingNeeds: readonly string[];
}

/**
 * What a list's needs ask of the hands: how many are reached, clumsy (reached too) or missing, and by cost class. `countOf`
 * weighs each need by how often it is typed; a need that is missing is named however seldom that is.
 */
export function listCoverage(list: CoveredList, countOf: (need: Need) => number = () => 1): ListCoverage {
  const classes = { 'one press': 0, 'one hold': 0, 'a chord': 0, 'two strokes': 0, 'three and more': 0 };
  const missingNeeds: string[] = [];
  let [total, clumsy, missing] = [0, 0, 0];
  for (const { need, route } of list.needs) {
    const count = countOf(need);
    total += count;
    if (route === null) {
      missing += count;
      missingNeeds.push(needText(need));
    } else {
      classes[costClassOf(route)] += count;
      if (route.clumsy) clumsy += count;
    }
  }
  const { name, title } = list;
  return { name, title, total, reached: total - missing, clumsy, missing, classes, missingNeeds };
}
