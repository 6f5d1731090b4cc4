import type {
  Binding,
  Chord,
  ChordId,
  DiaryNote,
  KeyId,
  Keymap,
  Layer,
  LayerId,
  NoteId,
  Place,
} from './types.ts';

/** The layer of that id, undefined where there is none. */
export function layerById(keymap: Keymap, id: LayerId): Layer | undefined {
  return keymap.layers.find((layer) => layer.id === id);
}

/** The chord of that id, undefined where there is none. */
export function chordById(keymap: Keymap, id: ChordId): Chord | undefined {
  return keymap.chords?.find((chord) => chord.id === id);
}

/** The diary's note of that id, undefined where there is none. */
export function noteById(keymap: Keymap, id: NoteId): DiaryNote | undefined {
  return keymap.diary?.find((note) => note.id === id);
}

/** Whether the board has a key of that id. */
export function hasKey(keymap: Keymap, id: KeyId): boolean {
  return keymap.board.keys.some((key) => key.id === id);
}

/**
 * A layer's own binding for a key, undefined where the key falls through.
 * Key ids such as `constructor` are allowed, so a bare `layer.places[key]` may find what no file holds.
 */
export function bindingOn(layer: Layer, key: KeyId): Binding | undefined {
  return Object.hasOwn(layer.places, key) ? layer.places[key] : undefined;
}

/** The binding at a place itself, without falling through; undefined where there is none or no such layer. */
export function bindingAt(keymap: Keymap, place: Place): Binding | undefined {
  const layer = layerById(keymap, place.layer);
  return layer && bindingOn(layer, place.key);
}

/**
 * What a key does while the given layers are on (rule S12): the binding on the highest of them that has one,
 * with that layer. The order in which the ids are given does not matter; the base layer is always on.
 */
export function bindingThrough(
  keymap: Keymap,
  on: ReadonlySet<LayerId>,
  key: KeyId,
): { readonly layer: Layer; readonly binding: Binding } | undefined {
  for (let index = keymap.layers.length - 1; index >= 0; index -= 1) {
    const layer = keymap.layers[index];
    if (!layer || (index > 0 && !on.has(layer.id))) continue;
    const binding = bindingOn(layer, key);
    if (binding) return { layer, binding };
  }
  return undefined;
}
