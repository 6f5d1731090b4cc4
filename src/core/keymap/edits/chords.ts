import { castDraft, type Draft, produce } from 'immer';
import { actionWords } from '../action-words.ts';
import type { ChordChange, OptionalOfChord } from '../edit.ts';
import { chordById, hasKey } from '../lookup.ts';
import type { Chord, Keymap } from '../types.ts';
import { unpinned } from './diary-pins.ts';
import { type Edited, type EditNamed, made, missingLayer, refused } from './outcome.ts';

/** A chord in words: its name, else what it does. */
function chordWords(keymap: Keymap, chord: Chord): string {
  return chord.name ?? actionWords(keymap, chord.action);
}

function whyNot(keymap: Keymap, chord: Chord | ChordChange): string | undefined {
  const key = chord.keys?.find((id) => !hasKey(keymap, id));
  if (key !== undefined) return `The board has no key with the id ${JSON.stringify(key)}.`;
  if (new Set(chord.keys).size < (chord.keys?.length ?? 0)) return 'A chord names each of its keys once.';
  const layers = chord.layers ?? [];
  if (new Set(layers).size < layers.length) return 'A chord names each of its layers once.';
  return layers.map((id) => missingLayer(keymap, id)).find((sentence) => sentence !== undefined);
}

function missingChord(id: string): Edited {
  return refused(`There is no chord with the id ${JSON.stringify(id)}.`);
}

/** Adds a chord after the others. */
export function addChord(keymap: Keymap, { chord }: EditNamed<'add-chord'>): Edited {
  if (chordById(keymap, chord.id)) {
    return refused(`There is a chord with the id ${JSON.stringify(chord.id)} already.`);
  }
  const why = whyNot(keymap, chord);
  if (why !== undefined) return refused(why);
  const next = produce(keymap, (draft) => {
    draft.chords = [...(draft.chords ?? []), castDraft(chord)];
  });
  return made(next, `Make chord ${chordWords(keymap, chord)}`);
}

/** Changes some fields of a chord; an optional field set to null goes. Its place in the order stays. */
export function changeChord(keymap: Keymap, edit: EditNamed<'change-chord'>): Edited {
  const before = chordById(keymap, edit.chord);
  if (!before) return missingChord(edit.chord);
  const why = whyNot(keymap, edit.to);
  if (why !== undefined) return refused(why);
  const after = changed(before, edit.to);
  const next = produce(keymap, (draft) => {
    draft.chords = draft.chords?.map((chord) => (chord.id === edit.chord ? castDraft(after) : chord)) ?? [];
  });
  return made(next, `Change chord ${chordWords(keymap, after)}`);
}

function setField<Field extends OptionalOfChord>(
  target: Draft<Chord>,
  field: Field,
  value: Draft<Chord>[Field] | null | undefined,
): void {
  if (value === null) delete target[field];
  else if (value !== undefined) target[field] = value;
}

function changed(before: Chord, to: ChordChange): Chord {
  return produce(before, (chord) => {
    chord.keys = [...(to.keys ?? before.keys)];
    chord.windowMs = to.windowMs ?? before.windowMs;
    chord.action = castDraft(to.action ?? before.action);
    setField(chord, 'name', to.name);
    setField(chord, 'layers', castDraft(to.layers));
    setField(chord, 'quietBeforeMs', to.quietBeforeMs);
    setField(chord, 'release', to.release);
    setField(chord, 'onShift', castDraft(to.onShift));
    setField(chord, 'hold', castDraft(to.hold));
    setField(chord, 'holdAfterMs', to.holdAfterMs);
    setField(chord, 'holdBy', to.holdBy);
    setField(chord, 'againWithinMs', to.againWithinMs);
    setField(chord, 'tapIfAlone', to.tapIfAlone);
  });
}

/** Deletes a chord. */
export function deleteChord(keymap: Keymap, edit: EditNamed<'delete-chord'>): Edited {
  const chord = chordById(keymap, edit.chord);
  if (!chord) return missingChord(edit.chord);
  const alongside: string[] = [];
  const next = produce(keymap, (draft) => {
    draft.chords = draft.chords?.filter(({ id }) => id !== edit.chord) ?? [];
    alongside.push(...unpinned(draft));
  });
  return made(next, `Delete chord ${chordWords(keymap, chord)}`, alongside);
}
