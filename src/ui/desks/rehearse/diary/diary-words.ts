import { freshId } from '../../../../core/keymap/fresh-id.ts';
import { chordsOf } from '../../../../core/keymap/timing.ts';
import type { DiaryNote, KeyId, Keymap } from '../../../../core/keymap/types.ts';
import { listed, type Names } from '../../../../core/rehearse/key-words.ts';
import { stateDigest } from '../../../../core/rehearse/state-digest.ts';

/** What a note can be about, by the value of its choice. */
export function pinOptions(keymap: Keymap, down: readonly KeyId[], names: Names) {
  const keys = down.length === 0 ? [] : [{ value: 'keys', label: keysWords(down, names) }];
  const layers = keymap.layers.map(({ id, name }) => ({
    value: `layer ${id}`,
    label: name,
    group: 'Layers',
  }));
  const chords = chordsOf(keymap).map(({ id }) => ({
    value: `chord ${id}`,
    label: names.chord(id),
    group: 'Chords',
  }));
  const all = keymap.board.keys.map(({ id }) => ({
    value: `key ${id}`,
    label: names.key(id),
    group: 'Keys',
  }));
  return [{ value: 'design', label: 'the design as a whole' }, ...keys, ...chords, ...layers, ...all];
}

function keysWords(keys: readonly KeyId[], names: Names): string {
  return `${listed(keys.map((key) => names.key(key)))}, down at the cursor`;
}

type Pins = Pick<DiaryNote, 'keys' | 'layer' | 'chord'>;

/** What a note is pinned to, by the value of its choice. */
export function pinsOf(value: string, down: readonly KeyId[]): Pins {
  const id = value.slice(value.indexOf(' ') + 1);
  if (value === 'keys') return { keys: [...down] };
  if (value.startsWith('key ')) return { keys: [id] };
  if (value.startsWith('layer ')) return { layer: id };
  return value.startsWith('chord ') ? { chord: id } : {};
}

/** A note as it enters the document. writtenAt: RFC 3339. */
export function newNote(keymap: Keymap, text: string, pins: Pins, writtenAt: string): DiaryNote {
  const id = freshId('note', new Set((keymap.diary ?? []).map((note) => note.id)));
  return { id, text, ...pins, writtenAt, state: stateDigest(keymap), tickedOff: false };
}

/** What a note is about, in a few words. */
export function aboutWords({ keys, layer, chord }: DiaryNote, names: Names): string {
  if (keys !== undefined) return `about ${listed(keys.map((key) => names.key(key)))}`;
  if (chord !== undefined) return `about the chord ${names.chord(chord)}`;
  return layer === undefined ? 'about the design' : `about the layer ${names.layer(layer)}`;
}

/** When a note was written, and whether the design is still as it was then. */
export function whenWords({ writtenAt, state }: DiaryNote, keymap: Keymap): string {
  const day = writtenAt.slice(0, 10);
  return state === stateDigest(keymap) ? `${day}, with the design as it is` : `${day}, before later changes`;
}
