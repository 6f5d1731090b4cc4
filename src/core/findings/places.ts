import type { Action, Binding, BoardKey, Layer } from '../keymap/types.ts';
import type { Facts } from './facts.ts';
import { has } from './layer-grid.ts';

/** A binding with where it lies, looked up. */
export interface BoundPlace {
  readonly key: BoardKey;
  readonly keyNumber: number;
  readonly layer: Layer;
  readonly layerNumber: number;
  readonly binding: Binding;
}

/** All bindings of keys that the board has, layer by layer, keys in the board's order. */
export function boundPlaces({ keymap, grid }: Facts): readonly BoundPlace[] {
  return keymap.layers.flatMap((layer, layerNumber) =>
    keymap.board.keys.flatMap((key, keyNumber) => {
      const binding = has(grid.bound[keyNumber] ?? 0, layerNumber) ? layer.places[key.id] : undefined;
      return binding === undefined ? [] : [{ key, keyNumber, layer, layerNumber, binding }];
    }),
  );
}

/** Whether the binding at a place can take effect. */
export function isReached({ reach }: Facts, place: BoundPlace): boolean {
  return has(reach.reached[place.keyNumber] ?? 0, place.layerNumber);
}

/** The actions of a binding with their sides, the tap first. */
export function sidesOf(
  binding: Binding,
): readonly { readonly side: 'tap' | 'hold'; readonly action: Action }[] {
  return (['tap', 'hold'] as const).flatMap((side) => {
    const action = binding[side];
    return action === undefined ? [] : [{ side, action }];
  });
}
