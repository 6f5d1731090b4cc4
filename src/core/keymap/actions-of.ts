import type { Path } from './problem.ts';
import type { Action, ChordId, Keymap, Place, Slot } from './types.ts';

/** An action and where it stands: at a place or in a chord, on its tap side, in place of it under Shift, or on its hold side. */
export interface StandingAction {
  readonly action: Action;
  readonly path: Path;
  readonly at:
    | { readonly place: Place; readonly side: Slot }
    | { readonly chord: ChordId; readonly side: Slot };
}

/** The slots of a binding in the order in which they are written. */
export const SLOTS = ['tap', 'onShift', 'hold'] as const satisfies readonly Slot[];

/** Every action of a keymap: layer by layer in document order, each tap before its hold, then the chords. */
export function actionsOf(keymap: Keymap): readonly StandingAction[] {
  const all: StandingAction[] = [];
  keymap.layers.forEach((layer, index) => {
    for (const [key, binding] of Object.entries(layer.places)) {
      for (const side of SLOTS) {
        const action = binding[side];
        const path = ['layers', index, 'places', key, side];
        if (action) all.push({ action, path, at: { place: { layer: layer.id, key }, side } });
      }
    }
  });
  keymap.chords?.forEach((chord, index) => {
    for (const side of SLOTS) {
      const field = side === 'tap' ? 'action' : side;
      const action = chord[field];
      if (action) all.push({ action, path: ['chords', index, field], at: { chord: chord.id, side } });
    }
  });
  return all;
}
