import type { Edit } from '../core/keymap/edit.ts';
import type { Binding, Keymap, LayerId, Place } from '../core/keymap/types.ts';
import type { Carried, Target } from './bench-state.ts';

/**
 * The edit that putting a carried thing down makes: an action is bound to the side that was met; a whole
 * binding moves to a free place and changes places with what lies on a taken one. Null where nothing changes.
 */
export function editOfDrop(keymap: Keymap, layer: LayerId, target: Target, carried: Carried): Edit | null {
  const to: Place = { layer, key: target.key };
  if (carried.carry === 'action') {
    return { edit: 'bind', place: to, side: target.side, action: carried.action };
  }
  const from = carried.from;
  if ((from.layer === to.layer && from.key === to.key) || bindingAt(keymap, from) === undefined) return null;
  return bindingAt(keymap, to) === undefined
    ? { edit: 'move-binding', from, to }
    : { edit: 'swap-bindings', one: from, other: to };
}

function bindingAt(keymap: Keymap, place: Place): Binding | undefined {
  const places = keymap.layers.find((layer) => layer.id === place.layer)?.places ?? {};
  return Object.hasOwn(places, place.key) ? places[place.key] : undefined;
}
