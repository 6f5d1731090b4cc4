import type { Finding } from '../../../core/findings/find.ts';
import type { Route } from '../../../core/routes/types.ts';
import type { Lit } from '../../../store/bench-state.ts';

/** What lights up when a need is shown: the keys of its route, in the order in which they go down. */
export function litByRoute(route: Route, why: string): Lit {
  const order = route.steps.flatMap((step) =>
    step.move === 'release' ? [] : step.keys.map((key) => ({ key, held: step.move === 'hold' })),
  );
  const chords = route.steps.flatMap((step) => (step.chord === undefined ? [] : [step.chord]));
  return {
    why,
    keys: [...new Set(order.map(({ key }) => key))],
    chords: [...new Set(chords)],
    layers: [],
    order,
  };
}

/** What lights up when a finding is shown: the parts it is about. */
export function litByFinding(finding: Finding): Lit {
  return { why: finding.message, ...finding.subjects, order: [] };
}
