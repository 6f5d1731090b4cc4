import { bindingOn } from '../keymap/lookup.ts';
import type { Binding, BoardKey, KeyId, Keymap, LayerId } from '../keymap/types.ts';

/** A set of layers as bits: bit i stands for the i-th layer, the base layer being bit 0. At most 32 (the limits). */
export type LayerSet = number;

/** The keys and layers of a design by number, and which key is bound on which layer. */
export interface LayerGrid {
  readonly keymap: Keymap;
  readonly keyNumber: ReadonlyMap<KeyId, number>;
  readonly layerNumber: ReadonlyMap<LayerId, number>;
  /** Per key, in the board's order: the layers that have a binding for it. */
  readonly bound: readonly LayerSet[];
}

/** Numbers the keys and layers of a design; bindings of keys that the board lacks are left out. */
export function layerGrid(keymap: Keymap): LayerGrid {
  const keyNumber = numbered(keymap.board.keys);
  const layerNumber = numbered(keymap.layers);
  const bound = keymap.board.keys.map(() => 0);
  keymap.layers.forEach((layer, number) => {
    for (const id of Object.keys(layer.places)) {
      const key = keyNumber.get(id);
      if (key !== undefined) bound[key] = (bound[key] ?? 0) | (1 << number);
    }
  });
  return { keymap, keyNumber, layerNumber, bound };
}

function numbered(things: readonly { readonly id: string }[]): ReadonlyMap<string, number> {
  return new Map(things.map((thing, number) => [thing.id, number]));
}

/** The number of the highest layer of a set, -1 of none. */
export function highest(layers: LayerSet): number {
  return 31 - Math.clz32(layers);
}

/** Whether a layer is in a set. */
export function has(layers: LayerSet, layer: number): boolean {
  return ((layers >>> layer) & 1) === 1;
}

/** The numbers of the layers in a set, lowest first. */
export function numbersIn(layers: LayerSet): readonly number[] {
  const numbers: number[] = [];
  for (let rest = layers >>> 0; rest !== 0; rest = (rest & (rest - 1)) >>> 0) {
    numbers.push(31 - Math.clz32(rest & -rest));
  }
  return numbers;
}

/** The layer from which a key takes its binding while some layers are on (rule S12), -1 where none binds it. */
export function effectiveLayer(grid: LayerGrid, key: number, on: LayerSet): number {
  return highest((grid.bound[key] ?? 0) & on);
}

/** The binding at a place given by numbers. */
export function bindingAt(grid: LayerGrid, key: number, layer: number): Binding | undefined {
  const id = grid.keymap.board.keys[key]?.id;
  const sheet = grid.keymap.layers[layer];
  return id === undefined || sheet === undefined ? undefined : bindingOn(sheet, id);
}

/** The key with a number, where there is one. */
export function keyAt(grid: LayerGrid, key: number): BoardKey | undefined {
  return grid.keymap.board.keys[key];
}

/** Adds the layers that are on because all the layers they name are on (rule A4), and the base layer. */
export function withConditions(grid: LayerGrid, layers: LayerSet): LayerSet {
  let on = layers | 1;
  grid.keymap.layers.forEach((layer, number) => {
    if (layer.onWhile?.every((id) => has(on, grid.layerNumber.get(id) ?? 32)) === true) on |= 1 << number;
  });
  return on;
}
