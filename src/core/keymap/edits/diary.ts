import { castDraft, produce } from 'immer';
import type { NoteChange } from '../edit.ts';
import { chordById, hasKey, noteById } from '../lookup.ts';
import type { DiaryNote, Keymap, NoteId } from '../types.ts';
import { type Edited, type EditNamed, made, missingLayer, refused } from './outcome.ts';

/** The beginning of what a note says, for the names of steps. */
function noteWords({ text }: DiaryNote): string {
  const signs = [...text];
  return signs.length > 30 ? `“${signs.slice(0, 28).join('')}…”` : `“${text}”`;
}

function missingNote(id: NoteId): Edited {
  return refused(`The diary has no note with the id ${JSON.stringify(id)}.`);
}

function whyNot(keymap: Keymap, { keys, layer, chord }: DiaryNote | NoteChange): string | undefined {
  const key = keys?.find((id) => !hasKey(keymap, id));
  if (key !== undefined) return `The board has no key with the id ${JSON.stringify(key)}.`;
  if (new Set(keys ?? []).size < (keys?.length ?? 0)) return 'A note names each of its keys once.';
  if (chord && !chordById(keymap, chord)) {
    return `There is no chord with the id ${JSON.stringify(chord)}.`;
  }
  return layer ? missingLayer(keymap, layer) : undefined;
}

function withNote(keymap: Keymap, after: DiaryNote): Keymap {
  return produce(keymap, (draft) => {
    draft.diary = draft.diary?.map((note) => (note.id === after.id ? castDraft(after) : note)) ?? [];
  });
}

/** Writes a note after the others; its time and the digest of the design are handed in. */
export function addDiaryNote(keymap: Keymap, { note }: EditNamed<'add-diary-note'>): Edited {
  if (noteById(keymap, note.id)) {
    return refused(`The diary has a note with the id ${JSON.stringify(note.id)} already.`);
  }
  const why = whyNot(keymap, note);
  if (why !== undefined) return refused(why);
  const next = produce(keymap, (draft) => {
    draft.diary = [...(draft.diary ?? []), castDraft(note)];
  });
  return made(next, `Note ${noteWords(note)}`);
}

/** Changes what a note says or what it is about; when and of which state it was written stays. */
export function changeDiaryNote(keymap: Keymap, edit: EditNamed<'change-diary-note'>): Edited {
  const before = noteById(keymap, edit.note);
  if (!before) return missingNote(edit.note);
  const why = whyNot(keymap, edit.to);
  if (why !== undefined) return refused(why);
  const { text, keys, layer, chord } = edit.to;
  const after = produce(before, (note) => {
    if (text !== undefined) note.text = text;
    if (keys === null) delete note.keys;
    else if (keys !== undefined) note.keys = [...keys];
    if (layer === null) delete note.layer;
    else if (layer !== undefined) note.layer = layer;
    if (chord === null) delete note.chord;
    else if (chord !== undefined) note.chord = chord;
  });
  return made(withNote(keymap, after), `Change the note ${noteWords(after)}`);
}

/** Ticks a note off, or takes the tick away. */
export function tickDiaryNote(keymap: Keymap, edit: EditNamed<'tick-diary-note'>): Edited {
  const before = noteById(keymap, edit.note);
  if (!before) return missingNote(edit.note);
  const { tickedOff } = edit;
  const next = before.tickedOff === tickedOff ? keymap : withNote(keymap, { ...before, tickedOff });
  return made(next, `${tickedOff ? 'Tick off' : 'Take up again'} the note ${noteWords(before)}`);
}

/** Deletes a note; with the last one the diary goes. */
export function deleteDiaryNote(keymap: Keymap, edit: EditNamed<'delete-diary-note'>): Edited {
  const before = noteById(keymap, edit.note);
  if (!before) return missingNote(edit.note);
  const left = (keymap.diary ?? []).filter(({ id }) => id !== edit.note);
  const next = produce(keymap, (draft) => {
    if (left.length === 0) delete draft.diary;
    else draft.diary = castDraft(left);
  });
  return made(next, `Delete the note ${noteWords(before)}`);
}
