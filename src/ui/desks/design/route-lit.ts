import type { Finding } from '../../../core/findings/find.ts';
import { chordsOf, layersOfChord } from '../../../core/keymap/timing.ts';
import type { Keymap, LayerId } from '../../../core/keymap/types.ts';
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

/**
 * What lights up when a finding is shown: the parts it is about; where those are whole layers, what is bound on them.
 */
export function litByFinding(finding: Finding, keymap: Keymap): Lit {
  const { keys, layers, chords } = finding.subjects;
  const isOfLayers = keys.length === 0 && chords.length === 0;
  const bound = keymap.layers
    .filter(({ id }) => layers.includes(id))
    .flatMap(({ places }) => Object.keys(places));
  return {
    why: finding.message,
    keys: isOfLayers ? [...new Set(bound)] : keys,
    chords,
    layers,
    order: [],
  };
}

/** The layer to look at for a finding: its own, else the lowest on which its chord is live; null if any will do. */
export function layerOfFinding(finding: Finding, keymap: Keymap): LayerId | null {
  const { layers, chords } = finding.subjects;
  const [own] = layers;
  if (own !== undefined) return own;
  const chord = chordsOf(keymap).find(({ id }) => id === chords[0]);
  return chord === undefined ? null : (layersOfChord(keymap, chord)[0] ?? null);
}
