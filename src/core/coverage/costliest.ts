import type { Need } from '../keymap/need.ts';
import { needText } from '../keymap/need.ts';
import type { Cost, NeedRoute, Route } from '../routes/types.ts';

/** A reached need and what it costs. */
export interface CostlyNeed {
  readonly need: Need;
  readonly route: Route;
  /** How often it is typed; 1 where nothing is weighted. */
  readonly count: number;
  /** Presses beyond one each: what it costs more than a key of its own would, as often as it is typed. */
  readonly extraPresses: number;
}

/**
 * The needs that cost most, dearest first, each once. With `countOf` those that make the most presses beyond one each, and
 * what makes none is left out; without it those whose one route costs most, field by field. Of equal ones the first given.
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
    if (route === null || found.has(text)) continue;
    const extraPresses = count * (route.cost.presses - 1);
    if (countOf === undefined || extraPresses > 0) found.set(text, { need, route, count, extraPresses });
  }
  const byPresses = (one: CostlyNeed, other: CostlyNeed) => other.extraPresses - one.extraPresses;
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
