import { samePlain } from '../base/same-plain.ts';
import { freshId } from '../keymap/fresh-id.ts';
import type { Keymap } from '../keymap/types.ts';
import { withLayerIds } from './layer-ids.ts';

/**
 * My state with other ids for the layers, chords and notes that I added under ids which they gave to different ones of
 * theirs: both were meant, so both are to stay.
 */
export function withFreshIds(base: Keymap, mine: Keymap, theirs: Keymap): Keymap {
  const layers = withLayerIds(mine, clashes(base.layers, mine.layers, theirs.layers));
  const chords = clashes(base.chords ?? [], layers.chords ?? [], theirs.chords ?? []);
  const notes = clashes(base.diary ?? [], layers.diary ?? [], theirs.diary ?? []);
  if (chords.size + notes.size === 0) return layers;
  const renamed = layers.chords?.map((chord) => ({ ...chord, id: chords.get(chord.id) ?? chord.id }));
  const diary = layers.diary?.map((note) => ({
    ...note,
    id: notes.get(note.id) ?? note.id,
    ...(note.chord === undefined ? {} : { chord: chords.get(note.chord) ?? note.chord }),
  }));
  return { ...layers, ...(renamed ? { chords: renamed } : {}), ...(diary ? { diary } : {}) };
}

/** My ids that clash, each with a free one in its place. */
function clashes(
  base: readonly { readonly id: string }[],
  mine: readonly { readonly id: string }[],
  theirs: readonly { readonly id: string }[],
): ReadonlyMap<string, string> {
  const taken = new Set([...base, ...mine, ...theirs].map(({ id }) => id));
  const free = new Map<string, string>();
  for (const one of mine) {
    const other = theirs.find(({ id }) => id === one.id);
    if (other === undefined || base.some(({ id }) => id === one.id) || samePlain(one, other)) continue;
    const id = freshId(one.id.slice(0, 12), taken);
    taken.add(id);
    free.set(one.id, id);
  }
  return free;
}
