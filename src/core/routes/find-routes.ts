import type { HostLayout } from '../host/host-layout.ts';
import { type Need, needText } from '../keymap/need.ts';
import type { Keymap } from '../keymap/types.ts';
import { eventsOf, movesTo } from './events.ts';
import { type Plan, planOf } from './plan.ts';
import type { NeedRoute, Route, Step } from './types.ts';
import { type Found, searchWays } from './ways.ts';

/**
 * How each need is typed on a design, in the order asked: the cheapest route by (strokes, presses, holds, ms of waiting);
 * of equal ones one without a clumsy press, then the one that comes first when keys are tried in the board's order and
 * chords after them in the document's. Null where no route exists. Steps and events are worked out when they are read.
 */
export function findRoutes(keymap: Keymap, host: HostLayout, needs: readonly Need[]): readonly NeedRoute[] {
  const plan = planOf(keymap, host);
  const distinct = new Map(needs.map((need) => [needText(need), need]));
  const order = [...distinct.values()];
  const ways = searchWays(plan, host, order);
  const routes = new Map(order.map((need, at) => [needText(need), routeOf(plan, need, ways[at] ?? null)]));
  return needs.map((need) => ({ need, route: routes.get(needText(need)) ?? null }));
}

function routeOf(plan: Plan, need: Need, found: Found | null): Route | null {
  if (found === null) return null;
  const { end, strokes } = found;
  const { presses, holds, waitMs, clumsy } = end;
  let steps: readonly Step[] | undefined;
  let events: Route['events'] | undefined;
  return {
    need,
    cost: { strokes, presses, holds, waitMs },
    clumsy,
    get steps() {
      steps ??= stepsOf(plan, found);
      return steps;
    },
    get events() {
      events ??= eventsOf(plan, end);
      return events;
    },
  };
}

function stepsOf(plan: Plan, { end }: Found): readonly Step[] {
  return movesTo(end).map((move) => {
    const keys = move.keys.map((key) => plan.keys[key]?.id ?? '');
    if (move.kind === 'release') return { move: 'release', keys };
    const isHeld = move.kept || move.settles === 'by-time';
    const chord = move.chord === null ? {} : { chord: move.chord.chord.id };
    const shifted = move.shifted ? { shifted: true as const } : {};
    return { move: isHeld ? 'hold' : 'press', keys, ...chord, side: move.side, ...shifted };
  });
}
