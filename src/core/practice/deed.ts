import type { Code } from '../keymap/codes.ts';
import { bindingThrough, chordById } from '../keymap/lookup.ts';
import { layersOfChord } from '../keymap/timing.ts';
import type { ChordId, KeyId, Keymap, LayerId, Side } from '../keymap/types.ts';

/** One key or chord that took effect, and under what. */
export interface Deed {
  readonly keys: readonly KeyId[];
  readonly chord: ChordId | null;
  readonly side: Side;
  /** Layers that were on when it took effect. */
  readonly layers: readonly LayerId[];
  /** Modifiers that were down before it took effect. */
  readonly modifiers: readonly Code[];
}

/** The layer whose binding a key has under a deed's layers, undefined where no layer has one for it. */
export function layerOfDeed(keymap: Keymap, deed: Deed): LayerId | undefined {
  const [key = ''] = deed.keys;
  if (deed.chord === null) return bindingThrough(keymap, new Set(deed.layers), key)?.layer.id;
  const highest = highestOn(keymap, deed.layers);
  const chord = chordById(keymap, deed.chord);
  if (chord === undefined) return undefined;
  return layersOfChord(keymap, chord).includes(highest) ? highest : layersOfChord(keymap, chord)[0];
}

/** The highest of the layers that are on; the base layer always is. */
export function highestOn(keymap: Keymap, on: readonly LayerId[]): LayerId {
  return keymap.layers.findLast(({ id }) => on.includes(id))?.id ?? keymap.layers[0]?.id ?? '';
}
