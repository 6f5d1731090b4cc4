import type { Act, ModifierSet } from './act.ts';
import type { LayerSet, Plan, PlannedBinding } from './plan.ts';

/** What the needs that are still to be found could make use of. */
export interface Sought {
  /** By code number: whether one of their strokes is on it. */
  readonly codes: Uint8Array;
  /** All modifiers around their strokes. */
  readonly modifiers: ModifierSet;
}

/**
 * The layers that can help to make the strokes sought: those with a place that gives one of the codes or modifiers or that
 * leads to such a layer, and those on which a chord that does so is live. Any other layer only covers what lies below it.
 */
export function relevantLayers(plan: Plan, sought: Sought): LayerSet {
  let relevant: LayerSet = 1;
  for (let before = 0; before !== relevant; ) {
    before = relevant;
    for (const [layer, bindings] of plan.bindings.entries()) {
      if ((relevant >>> layer) & 1) continue;
      if (bindings.some((binding) => binding !== null && helps(binding, sought, relevant))) {
        relevant |= 1 << layer;
      }
    }
    for (const chord of plan.chords) {
      if (chord.needsItsLayers && helps(chord.binding, sought, relevant)) relevant |= chord.live;
    }
    for (const { layer, all } of plan.conditions) if ((relevant >>> layer) & 1) relevant |= all;
  }
  return relevant;
}

function helps({ tap, shifted, hold }: PlannedBinding, sought: Sought, relevant: LayerSet): boolean {
  return [tap, shifted, hold].some((act) => act !== null && isOfUse(act, sought, relevant));
}

function isOfUse(act: Act, sought: Sought, relevant: LayerSet): boolean {
  switch (act.kind) {
    // Without strokes it still uses up latched layers.
    case 'type':
      return act.signs.every((sign) => sought.codes[sign >> 8] === 1);
    case 'modifiers':
    case 'modifier':
      return (act.set & sought.modifiers) !== 0;
    case 'layer':
      return ((relevant >>> act.layer) & 1) === 1;
    default:
      return false;
  }
}
