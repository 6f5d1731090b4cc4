import type { Chord, DiaryNote, Keymap, Layer, Timing } from '../keymap/types.ts';
import { mergedOrder } from './merged-order.ts';
import { isOfKind, type Part, type PartKind, type PartValues, placeId } from './parts.ts';

/**
 * Puts a design together from its parts. Layers stand in the order given; chords, notes and needs in theirs, with what
 * only mine has after what it follows there. References may be broken; see `clean-up.ts`.
 */
export function assembled(
  parts: readonly Part[],
  layerOrder: readonly string[],
  { mine, theirs }: { readonly mine: Keymap; readonly theirs: Keymap },
): Keymap {
  const values = <Kind extends PartKind>(kind: Kind): ReadonlyMap<string, PartValues[Kind]> => {
    const found = new Map<string, PartValues[Kind]>();
    for (const part of parts) if (isOfKind(part, kind)) found.set(part.id, part.value);
    return found;
  };
  const only = <Kind extends PartKind>(kind: Kind, otherwise: PartValues[Kind]) =>
    values(kind).get('') ?? otherwise;
  const inOrder = <Value>(all: ReadonlyMap<string, Value>, ids: (keymap: Keymap) => readonly string[]) =>
    mergedOrder(ids(theirs), ids(mine)).flatMap((id): [string, Value][] => {
      const value = all.get(id);
      return value === undefined ? [] : [[id, value]];
    });
  const chords: readonly Chord[] = inOrder(values('chord'), ({ chords = [] }) =>
    chords.map(({ id }) => id),
  ).map(([, chord]) => chord);
  const diary: readonly DiaryNote[] = inOrder(values('note'), (keymap) =>
    (keymap.diary ?? []).map(({ id }) => id),
  ).map(([, note]) => note);
  const needs = {
    lists: inOrder(values('need list'), (keymap) => keymap.needs?.lists ?? []).map(([id]) => id),
    own: inOrder(values('own need'), (keymap) => keymap.needs?.own ?? []).map(([id]) => id),
    waived: inOrder(values('waived need'), (keymap) =>
      (keymap.needs?.waived ?? []).map(({ need }) => need),
    ).map(([need, why]) => ({ need, why })),
  };
  const notes = only('notes', '');
  const timing: Timing = Object.assign({}, ...values('timing').values());
  const { $schema } = theirs;
  return {
    ...($schema === undefined ? {} : { $schema }),
    format: theirs.format,
    version: theirs.version,
    name: only('name', theirs.name),
    ...(notes === '' ? {} : { notes }),
    board: only('board', theirs.board),
    hosts: only('hosts', theirs.hosts),
    ...(Object.keys(timing).length === 0 ? {} : { timing }),
    ...(mine.needs || theirs.needs ? { needs } : {}),
    layers: layersOf(layerOrder, values('layer'), values('place'), [theirs, mine]),
    ...(chords.length > 0 || theirs.chords ? { chords } : {}),
    ...(diary.length > 0 ? { diary } : {}),
  };
}

function layersOf(
  order: readonly string[],
  layers: ReadonlyMap<string, PartValues['layer']>,
  places: ReadonlyMap<string, PartValues['place']>,
  states: readonly Keymap[],
): readonly Layer[] {
  return order.flatMap((id): Layer[] => {
    const layer = layers.get(id);
    if (layer === undefined) return [];
    const keys = states.flatMap((keymap) =>
      Object.keys(keymap.layers.find((each) => each.id === id)?.places ?? {}),
    );
    const bound = [...new Set(keys)].flatMap((key): [string, PartValues['place']][] => {
      const binding = places.get(placeId(id, key));
      return binding === undefined ? [] : [[key, binding]];
    });
    return [{ id, ...layer, places: Object.fromEntries(bound) }];
  });
}
