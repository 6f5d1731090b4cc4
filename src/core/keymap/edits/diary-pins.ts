import type { Draft } from 'immer';
import type { KeyId, Keymap } from '../types.ts';

/**
 * Takes the pins of notes off keys, layers and chords that are gone. The notes stay, with what they say: a remark is not
 * lost with the key that it was about. `keys`: those that stay, where they are not the board's. One sentence for all of them, none where nothing changed.
 */
export function unpinned(
  draft: Draft<Keymap>,
  keys: ReadonlySet<KeyId> = new Set(draft.board.keys.map(({ id }) => id)),
): string[] {
  const layers = new Set(draft.layers.map(({ id }) => id));
  const chords = new Set(draft.chords?.map(({ id }) => id));
  let count = 0;
  for (const note of draft.diary ?? []) {
    const left = note.keys?.filter((key) => keys.has(key));
    const fewer = left !== undefined && left.length < (note.keys?.length ?? 0);
    const noLayer = note.layer !== undefined && !layers.has(note.layer);
    const noChord = note.chord !== undefined && !chords.has(note.chord);
    if (fewer && left.length > 0) note.keys = left;
    else if (fewer) delete note.keys;
    if (noLayer) delete note.layer;
    if (noChord) delete note.chord;
    if (fewer || noLayer || noChord) count += 1;
  }
  if (count === 0) return [];
  return [
    `${count === 1 ? 'One note' : `${count} notes`} of the diary lost what ${count === 1 ? 'it was' : 'they were'} pinned to.`,
  ];
}
