import type { Action, Binding, BoardKey, Chord, Keymap, Layer } from '../../../src/core/keymap/types.ts';

/** A key of a row of caps; only its id matters here. */
export function boardKey(id: string, at: number): BoardKey {
  return {
    id,
    x: 20 * at,
    y: 0,
    rotation: 0,
    width: 17.5,
    height: 16.5,
    hand: 'left',
    finger: 'index',
    home: false,
  };
}

export const A: Action = { do: 'key', code: 'KeyA' };
export const B: Action = { do: 'key', code: 'KeyB' };

/** An action that turns a layer on while it is held. */
export function toLayer(layer: string): Action {
  return { do: 'layer', layer, mode: 'while-held' };
}

export function layer(id: string, places: Record<string, Binding> = {}, onWhile?: string[]): Layer {
  const name = id === 'base' ? 'Base' : id.toUpperCase();
  return { id, name, ...(onWhile ? { onWhile } : {}), places };
}

export function chord(id: string, keys: string[], more: Partial<Chord> = {}): Chord {
  return { id, keys, windowMs: 45, action: { do: 'key', code: 'Tab' }, ...more };
}

/** Keys k1 to k5, the given layers (a base alone), the given chords. */
export function small(layers: Layer[] = [layer('base')], chords?: Chord[]): Keymap {
  return {
    format: 'neutral-keymap',
    version: 1,
    name: 'Small',
    board: { name: 'Five', keys: ['k1', 'k2', 'k3', 'k4', 'k5'].map(boardKey) },
    hosts: [{ system: 'linux', layout: 'us', variant: '' }],
    layers,
    ...(chords ? { chords } : {}),
  };
}
