import type { Route } from '../routes/types.ts';
import type { Facts } from './facts.ts';
import type { LayerSet } from './layer-grid.ts';

const EVERY_LAYER: LayerSet = -1;

/**
 * Per key: the layers that may be on while some route presses it, all where it presses the key for want of a binding
 * (it then only counts as a press). A layer counts from the first press of anything that turns it on somewhere, so the
 * answer errs on the side of "in use": a place outside it can be bound, and every route still stands.
 */
export function usedWhileOn(facts: Facts): readonly LayerSet[] {
  const opens = layersOpenedBy(facts);
  const used = facts.grid.bound.map(() => 0);
  for (const { route } of facts.needs) if (route !== null) followRoute(facts, route, opens, used);
  return used;
}

function followRoute(facts: Facts, route: Route, opens: readonly LayerSet[], used: LayerSet[]): void {
  let on = 0;
  for (const step of route.steps) {
    if (step.move === 'release') continue;
    for (const id of step.keys) {
      const key = facts.grid.keyNumber.get(id) ?? -1;
      const isBound = ((facts.grid.bound[key] ?? 0) & (on | 1)) !== 0;
      used[key] = isBound ? (used[key] ?? 0) | on : EVERY_LAYER;
    }
    for (const id of step.keys) on |= opens[facts.grid.keyNumber.get(id) ?? -1] ?? 0;
    on = withCompany(facts, on);
  }
}

/** Per key: the layers that it turns on anywhere, alone or in a chord. */
function layersOpenedBy({ grid, reach }: Facts): readonly LayerSet[] {
  const opens = grid.bound.map(() => 0);
  for (const entry of reach.entries) {
    for (const key of entry.keys) opens[key] = (opens[key] ?? 0) | (1 << entry.target);
  }
  return opens;
}

function withCompany({ keymap, grid }: Facts, layers: LayerSet): LayerSet {
  let on = layers;
  keymap.layers.forEach((layer, number) => {
    const names = layer.onWhile ?? [];
    if (names.some((id) => ((on >>> (grid.layerNumber.get(id) ?? 0)) & 1) === 1)) on |= 1 << number;
  });
  return on;
}
