import type { HostLayout } from '../host/host-layout.ts';
import type { Need } from '../keymap/need.ts';
import { FewestPresses } from './fewest-presses.ts';
import { type Goals, goalsOf, MOST_STROKES } from './goals.ts';
import { meansOf } from './means.ts';
import type { Plan } from './plan.ts';
import { Search } from './search.ts';
import type { State } from './state.ts';
import { strokePlacesOf } from './stroke-places.ts';

/** The cheapest way to a need: the state in which it has been typed and only keys are left to be let go. */
export interface Found {
  readonly end: State;
  readonly strokes: number;
}

/** Searches the cheapest way to each need, by (strokes, presses, holds, ms), then without a clumsy press, then by what was found first. */
export function searchWays(plan: Plan, host: HostLayout, needs: readonly Need[]): readonly (Found | null)[] {
  const found: (Found | null)[] = needs.map(() => null);
  const means = meansOf(plan);
  const places = strokePlacesOf(plan);
  for (let strokes = 1; strokes <= MOST_STROKES; strokes++) {
    const open = needs.flatMap((_, index) => (found[index] === null ? [index] : []));
    const goals = goalsOf(needs, open, host, strokes, means);
    if (goals.setsOf.size === 0 && goals.bare.size === 0) continue;
    for (const [index, end] of cheapestEnds(plan, goals, new FewestPresses(plan, goals, places))) {
      found[index] = { end, strokes };
    }
  }
  return found;
}

const NO_LIMIT = Number.POSITIVE_INFINITY;

/**
 * The cheapest end for each need. A search looks no further than a need can take at the least; what is not found within
 * that, or takes more, is searched again within what it has been seen to take, then without a limit.
 */
function cheapestEnds(plan: Plan, goals: Goals, fewest: FewestPresses): ReadonlyMap<number, State> {
  const ends = new Map<number, State>();
  let limits = fewest.fromRest();
  for (let round = 0; limits.size > 0; round++) {
    fewest.within(limits);
    const found = new Search(plan, goals, new Set(limits.keys()), fewest).run();
    const again = new Map<number, number>();
    for (const [need, limit] of limits) {
      const end = found.get(need);
      if (end !== undefined && end.presses <= limit) ends.set(need, end);
      else if (end !== undefined) again.set(need, end.presses);
      else if (limit < NO_LIMIT) again.set(need, round === 0 ? limit + 1 : NO_LIMIT);
    }
    limits = again;
  }
  return ends;
}
