import { castDraft, type Draft, produce } from 'immer';
import { layerWords } from '../action-words.ts';
import { layerById } from '../lookup.ts';
import type { Action, Keymap, LayerId } from '../types.ts';
import { unpinned } from './diary-pins.ts';
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

/** Puts a layer on top of the others. */
export function addLayer(keymap: Keymap, { layer }: EditNamed<'add-layer'>): Edited {
  if (layerById(keymap, layer.id)) {
    return refused(`There is a layer with the id ${JSON.stringify(layer.id)} already.`);
  }
  const next = produce(keymap, (draft) => {
    draft.layers.push(castDraft(layer));
  });
  return made(next, `Add layer ${layer.name}`);
}

/** Gives a layer another name; its id, by which it is referred to, stays. */
export function renameLayer(keymap: Keymap, { layer, name }: EditNamed<'rename-layer'>): Edited {
  const missing = missingLayer(keymap, layer);
  if (missing !== undefined) return refused(missing);
  const next = produce(keymap, (draft) => {
    const found = draft.layers.find(({ id }) => id === layer);
    if (found) found.name = name;
  });
  return made(next, `Rename layer ${layerWords(keymap, layer)} to ${name}`);
}

/** Says with which lower layers a layer comes on; null: with none. */
export function setOnWhile(keymap: Keymap, { layer, onWhile }: EditNamed<'set-on-while'>): Edited {
  const missing =
    missingLayer(keymap, layer) ??
    onWhile?.map((id) => missingLayer(keymap, id)).find((sentence) => sentence !== undefined);
  if (missing !== undefined) return refused(missing);
  if (layer === keymap.layers[0]?.id) return refused('The base layer is always on.');
  const next = produce(keymap, (draft) => {
    const found = draft.layers.find(({ id }) => id === layer);
    if (!found) return;
    if (onWhile) found.onWhile = [...onWhile];
    else delete found.onWhile;
  });
  const lower = onWhile?.map((id) => layerWords(keymap, id)).join(' and ');
  const name = layerWords(keymap, layer);
  return made(next, lower ? `Turn ${name} on with ${lower}` : `Turn ${name} on by itself only`);
}

/** Deletes a layer and all that led to it: layer actions everywhere, its mention in chords and in `onWhile`. */
export function deleteLayer(keymap: Keymap, { layer }: EditNamed<'delete-layer'>, nameKey: NameKey): Edited {
  const missing = missingLayer(keymap, layer);
  if (missing !== undefined) return refused(missing);
  if (layer === keymap.layers[0]?.id) return refused('The base layer cannot be deleted.');
  const alongside: string[] = [];
  const next = produce(keymap, (draft) => {
    draft.layers = draft.layers.filter(({ id }) => id !== layer);
    alongside.push(
      ...dropLayerActions(draft, keymap, layer, nameKey),
      ...dropFromChords(draft, keymap, layer),
      ...dropFromOnWhile(draft, keymap, layer),
      ...unpinned(draft),
    );
  });
  return made(next, `Delete layer ${layerWords(keymap, layer)}`, alongside);
}

function leadsTo(action: Action | undefined, layer: LayerId): boolean {
  return action?.do === 'layer' && action.layer === layer;
}

function dropLayerActions(draft: Draft<Keymap>, keymap: Keymap, gone: LayerId, nameKey: NameKey): string[] {
  const dropped: string[] = [];
  for (const layer of draft.layers) {
    for (const [key, binding] of Object.entries(layer.places)) {
      for (const side of ['tap', 'hold'] as const) {
        if (!leadsTo(binding[side], gone)) continue;
        delete binding[side];
        dropped.push(`${placeWords(keymap, { layer: layer.id, key }, nameKey)} (${side})`);
      }
      if (!binding.tap) delete binding.onShift;
      if (!binding.tap && !binding.hold) delete layer.places[key];
    }
  }
  return dropped.length === 0 ? [] : [`Took away what led to the layer: ${listWords(dropped)}.`];
}

function dropFromChords(draft: Draft<Keymap>, keymap: Keymap, gone: LayerId): string[] {
  const sentences: string[] = [];
  const name = layerWords(keymap, gone);
  if (!draft.chords) return sentences;
  draft.chords = draft.chords.filter((chord) => {
    const words = chord.name ?? chord.id;
    if (leadsTo(chord.action, gone)) {
      sentences.push(`Deleted the chord ${words}, which led to ${name}.`);
      return false;
    }
    if (leadsTo(chord.hold, gone)) {
      sentences.push(`Took away the hold of the chord ${words}, which led to ${name}.`);
      delete chord.hold;
    }
    if (!chord.layers?.includes(gone)) return true;
    chord.layers = chord.layers.filter((id) => id !== gone);
    if (chord.layers.length > 0) sentences.push(`Took ${name} off the layers of the chord ${words}.`);
    else sentences.push(`Deleted the chord ${words}, which was live on ${name} only.`);
    return chord.layers.length > 0;
  });
  return sentences;
}

function dropFromOnWhile(draft: Draft<Keymap>, keymap: Keymap, gone: LayerId): string[] {
  const sentences: string[] = [];
  for (const layer of draft.layers) {
    if (!layer.onWhile?.includes(gone)) continue;
    const left = layer.onWhile.filter((id) => id !== gone);
    if (left.length >= 2) layer.onWhile = left;
    else delete layer.onWhile;
    const how = left.length >= 2 ? 'no longer waits for it' : 'no longer comes on with other layers';
    sentences.push(`${layerWords(keymap, layer.id)} ${how}.`);
  }
  return sentences;
}
