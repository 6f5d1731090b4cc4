import { type Need, needText } from '../keymap/need.ts';
import type { NeedRoute, Route } from '../routes/types.ts';

/** A need that is typed with more or fewer presses than before; counts of key presses. */
export interface CostChange {
  readonly need: Need;
  readonly before: number;
  readonly after: number;
}

/** How many needs a design reaches. */
export interface NeedStanding {
  readonly asked: number;
  readonly reached: number;
  readonly clumsy: number;
}

/** What a change of the design does to its needs. */
export interface NeedChanges {
  readonly before: NeedStanding;
  readonly after: NeedStanding;
  /** Could not be typed and can be now; could be and cannot be any more. */
  readonly gained: readonly Need[];
  readonly lost: readonly Need[];
  /** Typed otherwise than before, by the difference of presses, the greatest first; of equal ones in their order. */
  readonly cheaper: readonly CostChange[];
  readonly dearer: readonly CostChange[];
}

/** Compares the routes of the same needs, in the same order, on two designs. */
export function needChanges(before: readonly NeedRoute[], after: readonly NeedRoute[]): NeedChanges {
  const then = new Map(before.map(({ need, route }) => [needText(need), route]));
  const gained: Need[] = [];
  const lost: Need[] = [];
  const costs: CostChange[] = [];
  for (const { need, route } of after) {
    const was = then.get(needText(need)) ?? null;
    if (was === null && route !== null) gained.push(need);
    if (was !== null && route === null) lost.push(need);
    if (was === null || route === null || was.cost.presses === route.cost.presses) continue;
    costs.push({ need, before: was.cost.presses, after: route.cost.presses });
  }
  const difference = (change: CostChange) => Math.abs(change.after - change.before);
  const sorted = costs.toSorted((one, other) => difference(other) - difference(one));
  return {
    before: standingOf(before),
    after: standingOf(after),
    gained,
    lost,
    cheaper: sorted.filter((change) => change.after < change.before),
    dearer: sorted.filter((change) => change.after > change.before),
  };
}

function standingOf(needs: readonly NeedRoute[]): NeedStanding {
  const routes = needs.map(({ route }) => route).filter((route): route is Route => route !== null);
  return {
    asked: needs.length,
    reached: routes.length,
    clumsy: routes.filter(({ clumsy }) => clumsy).length,
  };
}
