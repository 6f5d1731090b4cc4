import type { Path } from './problem.ts';
import type { Action, ChordId, Keymap, Place, Side } from './types.ts';

/** An action and where it stands: at a place, on its tap or hold side, or in a chord. */
export interface StandingAction {
  readonly action: Action;
  readonly path: Path;
  readonly at: { readonly place: Place; readonly side: Side } | { readonly chord: ChordId };
}

/** Every action of a keymap: layer by layer in document order, each tap before its hold, then the chords. */
export function actionsOf(keymap: Keymap): readonly StandingAction[] {
  const all: StandingAction[] = [];
  keymap.layers.forEach((layer, index) => {
    for (const [key, binding] of Object.entries(layer.places)) {
      for (const side of ['tap', 'hold'] as const) {
        const action = binding[side];
        const path = ['layers', index, 'places', key, side];
        if (action) all.push({ action, path, at: { place: { layer: layer.id, key }, side } });
      }
    }
  });
  keymap.chords?.forEach((chord, index) => {
    all.push({ action: chord.action, path: ['chords', index, 'action'], at: { chord: chord.id } });
  });
  return all;
}
