import type { Route } from '../routes/types.ts';

/** How much a route asks of the hands, in five steps. */
export const COST_CLASSES = ['one press', 'one hold', 'a chord', 'two strokes', 'three and more'] as const;

export type CostClass = (typeof COST_CLASSES)[number];

/**
 * The class of a route, by what the hands do and not by how long it takes: a single tap; a tap inside a hold, or a
 * hold alone; one chord; two of these one after the other, or two strokes; anything beyond.
 */
export function costClassOf(route: Route): CostClass {
  const downs = route.steps.filter((step) => step.move !== 'release');
  const holds = downs.filter((step) => step.move === 'hold').length;
  const presses = downs.length - holds;
  const chords = downs.filter((step) => step.keys.length > 1).length;
  if (downs.length === 1 && chords === 1) return 'a chord';
  if (route.cost.strokes > 2 || downs.length > 2) return 'three and more';
  if (downs.length === 1 && route.cost.strokes === 1) return holds === 0 ? 'one press' : 'one hold';
  if (holds === 1 && presses === 1 && route.cost.strokes === 1) return chords === 0 ? 'one hold' : 'a chord';
  return 'two strokes';
}
