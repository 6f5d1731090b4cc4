import type { Cost, Route } from '../../../../core/routes/types.ts';

/** What a route costs, short enough for a row: "1 press", "2 presses, 1 held", "chord of 3". */
export function costWords(route: Route): string {
  const { cost } = route;
  const parts = [pressWords(route), ...heldWords(cost), ...waitWords(cost)];
  if (cost.strokes > 1) parts.unshift(`${cost.strokes} strokes`);
  return parts.join(', ');
}

function pressWords({ cost, steps }: Route): string {
  const only = steps.length === 1 ? steps[0] : undefined;
  if (only !== undefined && only.keys.length > 1) return `chord of ${only.keys.length}`;
  return cost.presses === 1 ? '1 press' : `${cost.presses} presses`;
}

function heldWords({ holds }: Cost): string[] {
  return holds === 0 ? [] : [`${holds} held`];
}

function waitWords({ waitMs }: Cost): string[] {
  return waitMs === 0 ? [] : [`waits ${Math.round(waitMs)} ms`];
}
