import { castDraft, produce } from 'immer';
import { layerWords } from '../action-words.ts';
import { layerById } from '../lookup.ts';
import type { Action, Binding, Keymap, Layer, LayerId } from '../types.ts';
import {
  type Edited,
  type EditNamed,
  listWords,
  made,
  missingLayer,
  type NameKey,
  placeWords,
  refused,
} from './outcome.ts';

/**
 * Puts a layer at another place of the stack, counted from the base layer at 0. All that names layers does so by id and
 * follows. A layer that comes on with lower ones stays above them, since only lower ones can turn it on.
 */
export function moveLayer(keymap: Keymap, { layer, to }: EditNamed<'move-layer'>): Edited {
  const missing = missingLayer(keymap, layer);
  if (missing !== undefined) return refused(missing);
  const [base] = keymap.layers;
  if (layer === base?.id) return refused('The base layer stays at the foot of the stack.');
  if (to === 0) return refused('Nothing lies below the base layer.');
  const moving = layerById(keymap, layer);
  const others = keymap.layers.filter(({ id }) => id !== layer);
  if (moving === undefined || !Number.isInteger(to) || to < 0 || to > others.length) {
    return refused(`The stack has no place ${to}.`);
  }
  const layers = others.toSpliced(to, 0, moving);
  if (layers.every((each, at) => each === keymap.layers[at])) return made(keymap, 'Move a layer');
  const waiting = underWhatItWaitsFor(layers);
  if (waiting !== undefined) {
    const [upper, lower] = waiting.map((id) => layerWords(keymap, id));
    return refused(`${upper} comes on with ${lower}, so it stays above it.`);
  }
  const next = produce(keymap, (draft) => {
    draft.layers = castDraft(layers);
  });
  const below = layers[to - 1]?.id ?? '';
  return made(next, `Move layer ${moving.name} above ${layerWords(keymap, below)}`);
}

/** The first layer of a stack that lies below one that it comes on with, and that one. */
function underWhatItWaitsFor(layers: readonly Layer[]): readonly [LayerId, LayerId] | undefined {
  for (const [at, { id, onWhile = [] }] of layers.entries()) {
    const above = onWhile.find((lower) => layers.findIndex((each) => each.id === lower) > at);
    if (above !== undefined) return [id, above];
  }
  return undefined;
}

/**
 * Puts a copy of a layer above it. The copy leads to itself where the layer led to itself, and chords that are live on
 * the layer are live on the copy. Nothing leads to the copy yet and it does not come on with other layers: the design
 * does what it did until somebody gives it a way in.
 */
export function duplicateLayer(
  keymap: Keymap,
  { layer, id, name }: EditNamed<'duplicate-layer'>,
  nameKey: NameKey,
): Edited {
  const original = layerById(keymap, layer);
  if (original === undefined) return refused(missingLayer(keymap, layer) ?? '');
  if (layerById(keymap, id)) return refused(`There is a layer with the id ${JSON.stringify(id)} already.`);
  const isBase = layer === keymap.layers[0]?.id;
  const places = Object.entries(original.places).map(([key, binding]): [string, Binding] => [
    key,
    isBase ? binding : ledTo(binding, layer, id),
  ]);
  const copy: Layer = { id, name, places: Object.fromEntries(places) };
  const chords: string[] = [];
  const next = produce(keymap, (draft) => {
    draft.layers.splice(keymap.layers.indexOf(original) + 1, 0, castDraft(copy));
    for (const chord of draft.chords ?? []) {
      if (chord.layers?.includes(layer) !== true) continue;
      chord.layers.push(id);
      chords.push(chord.name ?? chord.id);
    }
  });
  return made(next, `Duplicate layer ${original.name}`, [
    ...(chords.length === 0 ? [] : [`Live on the copy too: ${listWords(chords)}.`]),
    ...ownWaysBack(keymap, original, nameKey),
  ]);
}

function leads(action: Action | undefined, layer: LayerId): boolean {
  return action?.do === 'layer' && action.layer === layer;
}

/** A binding whose actions to one layer lead to another. */
function ledTo(binding: Binding, from: LayerId, to: LayerId): Binding {
  return produce(binding, (draft) => {
    for (const side of ['tap', 'hold'] as const) {
      const action = draft[side];
      if (action?.do === 'layer' && action.layer === from) action.layer = to;
    }
  });
}

function ownWaysBack(keymap: Keymap, layer: Layer, nameKey: NameKey): readonly string[] {
  const own = Object.entries(layer.places).filter(
    ([, { tap, hold }]) => leads(tap, layer.id) || leads(hold, layer.id),
  );
  if (own.length === 0) return [];
  const words = own.map(([key]) => placeWords(keymap, { layer: layer.id, key }, nameKey));
  return [`What led from the layer to itself leads from the copy to the copy: ${listWords(words)}.`];
}
