import type { Action, Binding, Keymap, LayerId } from '../keymap/types.ts';

/** A design with some layers under other ids, wherever they are named; references to others stay. */
export function withLayerIds(keymap: Keymap, ids: ReadonlyMap<LayerId, LayerId>): Keymap {
  if ([...ids].every(([from, to]) => from === to)) return keymap;
  const idOf = (id: LayerId) => ids.get(id) ?? id;
  const actionOf = (action: Action): Action =>
    action.do === 'layer' ? { ...action, layer: idOf(action.layer) } : action;
  const bindingOf = (binding: Binding): Binding => ({
    ...binding,
    ...(binding.tap ? { tap: actionOf(binding.tap) } : {}),
    ...(binding.hold ? { hold: actionOf(binding.hold) } : {}),
  });
  const layers = keymap.layers.map((layer) => ({
    ...layer,
    id: idOf(layer.id),
    ...(layer.onWhile ? { onWhile: layer.onWhile.map(idOf) } : {}),
    places: Object.fromEntries(
      Object.entries(layer.places).map(([key, binding]) => [key, bindingOf(binding)]),
    ),
  }));
  const chords = keymap.chords?.map((chord) => ({
    ...chord,
    ...(chord.layers ? { layers: chord.layers.map(idOf) } : {}),
    action: actionOf(chord.action),
    ...(chord.hold ? { hold: actionOf(chord.hold) } : {}),
  }));
  const diary = keymap.diary?.map((note) => (note.layer ? { ...note, layer: idOf(note.layer) } : note));
  return { ...keymap, layers, ...(chords ? { chords } : {}), ...(diary ? { diary } : {}) };
}
