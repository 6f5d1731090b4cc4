import { bindingOn } from '../keymap/lookup.ts';
import type { Action, Binding, BoardKey, Keymap, Layer, Side } from '../keymap/types.ts';
import { has, type LayerGrid } from './layer-grid.ts';
import type { LayerReach } from './layer-reach.ts';

/** One side of a binding. */
export interface BoundSide {
  readonly side: Side;
  readonly action: Action;
}

/** A binding with where it lies, looked up. */
export interface BoundPlace {
  readonly key: BoardKey;
  readonly keyNumber: number;
  readonly layer: Layer;
  readonly layerNumber: number;
  readonly binding: Binding;
  /** What it does, the tap first. */
  readonly sides: readonly BoundSide[];
  /** Whether it can take effect. */
  readonly reached: boolean;
}

/** All bindings of keys that the board has, layer by layer, keys in the board's order. */
export function boundPlaces(keymap: Keymap, grid: LayerGrid, reach: LayerReach): readonly BoundPlace[] {
  const places: BoundPlace[] = [];
  keymap.layers.forEach((layer, layerNumber) => {
    keymap.board.keys.forEach((key, keyNumber) => {
      const binding = has(grid.bound[keyNumber] ?? 0, layerNumber) ? bindingOn(layer, key.id) : undefined;
      if (binding === undefined) return;
      const reached = has(reach.reached[keyNumber] ?? 0, layerNumber);
      places.push({ key, keyNumber, layer, layerNumber, binding, sides: sidesOf(binding), reached });
    });
  });
  return places;
}

function sidesOf({ tap, hold }: Binding): readonly BoundSide[] {
  const sides: BoundSide[] = [];
  if (tap !== undefined) sides.push({ side: 'tap', action: tap });
  if (hold !== undefined) sides.push({ side: 'hold', action: hold });
  return sides;
}
