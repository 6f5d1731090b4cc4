import { chordById, hasKey, layerById } from '../../keymap/lookup.ts';
import { openNotes } from '../../keymap/open-notes.ts';
import type { DiaryNote, Keymap } from '../../keymap/types.ts';
import type { Finding } from '../find.ts';
import { finding, type Rule } from '../rule.ts';

const id = 'diary-note-open';

/** Brings back what was noted while typing, until it is ticked off. */
export const diaryNoteOpen: Rule = {
  id,
  title: 'Diary note that is open',
  why: 'What annoyed the typist while typing is worth an answer before the design counts as done.',
  check: ({ keymap }) => openNotes(keymap).map((note) => found(keymap, note)),
};

/** What a note was pinned to may be gone by now; it is said only as far as it is there. */
function found(keymap: Keymap, note: DiaryNote): Finding {
  const { keys = [], layer, chord, text, writtenAt } = note;
  return finding({
    rule: id,
    messageId: 'open',
    severity: 'note',
    message: `Noted on ${writtenAt.slice(0, 10)}: “${text}”.`,
    keys: keys.filter((key) => hasKey(keymap, key)),
    layers: layer !== undefined && layerById(keymap, layer) !== undefined ? [layer] : [],
    chords: chord !== undefined && chordById(keymap, chord) !== undefined ? [chord] : [],
    data: { note: note.id, text, writtenAt },
    mends: [{ title: 'Tick it off', edits: [{ edit: 'tick-diary-note', note: note.id, tickedOff: true }] }],
  });
}
