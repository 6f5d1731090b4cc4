import { needText } from '../keymap/need.ts';
import type { NeedRoute } from '../routes/types.ts';
import { COST_CLASSES, type CostClass, costClassOf } from './cost-class.ts';

/** A need list with the way to each of its needs, as far as there is one. */
export interface CoveredList {
  readonly name: string;
  readonly title: string;
  readonly needs: readonly NeedRoute[];
}

/** How a need list stands on a design: numbers of needs. */
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

/** What a list's needs ask of the hands: how many are reached, clumsy (reached too) or missing, and by cost class. */
export function listCoverage(list: CoveredList): ListCoverage {
  const classes = Object.fromEntries(COST_CLASSES.map((name) => [name, 0])) as Record<CostClass, number>;
  let clumsy = 0;
  const missingNeeds: string[] = [];
  for (const { need, route } of list.needs) {
    if (route === null) missingNeeds.push(needText(need));
    else {
      classes[costClassOf(route)] += 1;
      if (route.clumsy) clumsy += 1;
    }
  }
  const total = list.needs.length;
  return {
    name: list.name,
    title: list.title,
    total,
    reached: total - missingNeeds.length,
    clumsy,
    missing: missingNeeds.length,
    classes,
    missingNeeds,
  };
}
