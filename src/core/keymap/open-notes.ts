import { chordById } from './lookup.ts';
import type { DiaryNote, KeyId, Keymap, LayerId } from './types.ts';

const NONE: readonly DiaryNote[] = [];

/** The diary's notes that are not ticked off, in the order in which they were written. */
export function openNotes({ diary }: Keymap): readonly DiaryNote[] {
  return diary?.filter(({ tickedOff }) => !tickedOff) ?? NONE;
}

/** The open notes about a key: pinned to it, or to a chord that it belongs to. */
export function openNotesAbout(keymap: Keymap, key: KeyId): readonly DiaryNote[] {
  if (keymap.diary === undefined) return NONE;
  return openNotes(keymap).filter(
    ({ keys, chord }) =>
      keys?.includes(key) === true ||
      (chord !== undefined && chordById(keymap, chord)?.keys.includes(key) === true),
  );
}

/** The open notes that are pinned to a layer, whatever else they are about. */
export function openNotesOfLayer(keymap: Keymap, id: LayerId): readonly DiaryNote[] {
  return openNotes(keymap).filter(({ layer }) => layer === id);
}
