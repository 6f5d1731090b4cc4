import type { Need } from '../keymap/need.ts';
import { needText } from '../keymap/need.ts';
import type { Cost, NeedRoute, Route } from '../routes/types.ts';

/** A reached need and what it costs. */
export interface CostlyNeed {
  readonly need: Need;
  readonly route: Route;
  /** How often it is typed; 1 where nothing is weighted. */
  readonly count: number;
  /** Presses in all: those of the route, as often as it is typed. */
  readonly presses: number;
}

/**
 * The needs that cost most, dearest first, each once. With `countOf` those count that make the most presses in all, and
 * what is never typed is left out; without it those whose one route costs most, field by field. Of equal ones the first given.
 */
export function costliest(
  needs: readonly NeedRoute[],
  most: number,
  countOf?: (need: Need) => number,
): readonly CostlyNeed[] {
  const found = new Map<string, CostlyNeed>();
  for (const { need, route } of needs) {
    const count = countOf?.(need) ?? 1;
    const text = needText(need);
    if (route === null || count === 0 || found.has(text)) continue;
    found.set(text, { need, route, count, presses: count * route.cost.presses });
  }
  const byPresses = (one: CostlyNeed, other: CostlyNeed) => other.presses - one.presses;
  const byCost = (one: CostlyNeed, other: CostlyNeed) => compareCost(other.route.cost, one.route.cost);
  return [...found.values()].sort(countOf === undefined ? byCost : byPresses).slice(0, most);
}

function compareCost(one: Cost, other: Cost): number {
  return (
    one.strokes - other.strokes ||
    one.presses - other.presses ||
    one.holds - other.holds ||
    one.waitMs - other.waitMs
  );
}
