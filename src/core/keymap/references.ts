import { actionsOf } from './actions-of.ts';
import type { Path } from './problem.ts';
import type { ChordId, Keymap, LayerId, NoteId, Place, Slot } from './types.ts';

/** A name of a key, layer or chord that does not exist, and where it stands. */
export interface BrokenReference {
  readonly path: Path;
  /** What the name should be one of. */
  readonly names: 'key' | 'layer' | 'chord';
  readonly id: string;
  readonly at:
    | { readonly where: 'place'; readonly place: Place }
    | { readonly where: 'action'; readonly place: Place; readonly side: Slot }
    | { readonly where: 'chord-action' | 'chord-hold' | 'chord-key' | 'chord-layer'; readonly chord: ChordId }
    | { readonly where: 'on-while'; readonly layer: LayerId }
    | { readonly where: 'note-key' | 'note-layer' | 'note-chord'; readonly note: NoteId };
}

/**
 * Every reference to a key, layer or chord that the keymap does not have: places, layer actions, `onWhile`, the keys
 * and layers of chords, what notes of the diary are about. A keymap that was read has none; one made in memory may.
 */
export function brokenReferences(keymap: Keymap): readonly BrokenReference[] {
  const keys = new Set(keymap.board.keys.map(({ id }) => id));
  const layers = new Set(keymap.layers.map(({ id }) => id));
  return [
    ...brokenPlaces(keymap, keys),
    ...brokenActions(keymap, layers),
    ...brokenOnWhiles(keymap, layers),
    ...brokenChords(keymap, keys, layers),
    ...brokenNotes(keymap, keys, layers),
  ];
}

function brokenPlaces(keymap: Keymap, keys: ReadonlySet<string>): BrokenReference[] {
  return keymap.layers.flatMap((layer, index) =>
    Object.keys(layer.places)
      .filter((key) => !keys.has(key))
      .map((key) => ({
        path: ['layers', index, 'places', key],
        names: 'key' as const,
        id: key,
        at: { where: 'place' as const, place: { layer: layer.id, key } },
      })),
  );
}

function brokenActions(keymap: Keymap, layers: ReadonlySet<string>): BrokenReference[] {
  return actionsOf(keymap).flatMap(({ action, path, at }): BrokenReference[] => {
    if (action.do !== 'layer' || layers.has(action.layer)) return [];
    const broken = { path: [...path, 'layer'], names: 'layer', id: action.layer } as const;
    if (!('chord' in at)) return [{ ...broken, at: { where: 'action', ...at } }];
    const where = at.side === 'hold' ? 'chord-hold' : 'chord-action';
    return [{ ...broken, at: { where, chord: at.chord } }];
  });
}

function brokenOnWhiles(keymap: Keymap, layers: ReadonlySet<string>): BrokenReference[] {
  return keymap.layers.flatMap((layer, index) =>
    missingIn(layer.onWhile ?? [], layers).map(([id, at]) => ({
      path: ['layers', index, 'onWhile', at],
      names: 'layer' as const,
      id,
      at: { where: 'on-while' as const, layer: layer.id },
    })),
  );
}

function brokenChords(
  keymap: Keymap,
  keys: ReadonlySet<string>,
  layers: ReadonlySet<string>,
): BrokenReference[] {
  return (keymap.chords ?? []).flatMap((chord, index): BrokenReference[] => [
    ...missingIn(chord.keys, keys).map(([id, at]) => ({
      path: ['chords', index, 'keys', at],
      names: 'key' as const,
      id,
      at: { where: 'chord-key' as const, chord: chord.id },
    })),
    ...missingIn(chord.layers ?? [], layers).map(([id, at]) => ({
      path: ['chords', index, 'layers', at],
      names: 'layer' as const,
      id,
      at: { where: 'chord-layer' as const, chord: chord.id },
    })),
  ]);
}

function brokenNotes(
  keymap: Keymap,
  keys: ReadonlySet<string>,
  layers: ReadonlySet<string>,
): BrokenReference[] {
  const chords = new Set(keymap.chords?.map(({ id }) => id));
  return (keymap.diary ?? []).flatMap(({ id: note, keys: about = [], layer, chord }, index) => {
    const path = ['diary', index];
    const broken: BrokenReference[] = missingIn(about, keys).map(([id, at]) => ({
      path: [...path, 'keys', at],
      names: 'key',
      id,
      at: { where: 'note-key', note },
    }));
    if (layer !== undefined && !layers.has(layer))
      broken.push({ path: [...path, 'layer'], names: 'layer', id: layer, at: { where: 'note-layer', note } });
    if (chord !== undefined && !chords.has(chord))
      broken.push({ path: [...path, 'chord'], names: 'chord', id: chord, at: { where: 'note-chord', note } });
    return broken;
  });
}

/** The names that are not among the known ones, each with its index. */
function missingIn(names: readonly string[], known: ReadonlySet<string>): [string, number][] {
  return names.flatMap((name, at): [string, number][] => (known.has(name) ? [] : [[name, at]]));
}
