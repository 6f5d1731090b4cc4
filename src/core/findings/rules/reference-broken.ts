import { keyName } from '../../board/key-name.ts';
import { layerWords } from '../../keymap/action-words.ts';
import type { Edit, NoteChange } from '../../keymap/edit.ts';
import { noteById } from '../../keymap/lookup.ts';
import { type BrokenReference, brokenReferences } from '../../keymap/references.ts';
import type { ChordId, Keymap } from '../../keymap/types.ts';
import type { Facts } from '../facts.ts';
import type { Finding, Mend } from '../find.ts';
import { type FindingParts, finding, type Rule } from '../rule.ts';
import { sentence } from '../wording.ts';

const id = 'reference-broken';

/** Looks at every key and layer that a binding, a chord or a layer names. A file that was read has none broken. */
export const referenceBroken: Rule = {
  id,
  title: 'Reference to something that does not exist',
  why: 'What names it does nothing, and a file that holds it cannot be opened again.',
  check: (facts) => brokenReferences(facts.keymap).map((reference) => found(facts, reference)),
};

type NoteReference = Extract<BrokenReference['at'], { readonly note: unknown }>;
type About = Pick<FindingParts, 'keys' | 'layers' | 'chords'>;

function found({ keymap }: Facts, { at, id: missing, names }: BrokenReference): Finding {
  const { words, about, mend } = described(keymap, at, missing);
  const lacking =
    names === 'key'
      ? `the key ${missing}, which the board lacks`
      : `the ${names} ${missing}, which is not there`;
  return finding({
    rule: id,
    messageId: at.where,
    severity: 'broken',
    message: sentence(`${words} names ${lacking}.`),
    ...about,
    data: { missing, need: missing },
    mends: [mend],
  });
}

function described(
  keymap: Keymap,
  at: BrokenReference['at'],
  missing: string,
): { words: string; about: About; mend: Mend } {
  switch (at.where) {
    case 'place':
    case 'action': {
      const layer = layerWords(keymap, at.place.layer);
      const isPlace = at.where === 'place';
      const words = isPlace ? `a binding on ${layer}` : `${keyName(keymap.board, at.place.key)} on ${layer}`;
      const edit: Edit =
        isPlace || at.side === 'onShift'
          ? { edit: 'unbind', place: at.place }
          : { edit: 'unbind', place: at.place, side: at.side };
      const about = { keys: isPlace ? [] : [at.place.key], layers: [at.place.layer] };
      return { words, about, mend: { title: `Take it off ${layer}`, edits: [edit] } };
    }
    case 'on-while': {
      const layer = keymap.layers.find((each) => each.id === at.layer);
      const left = (layer?.onWhile ?? []).filter((each) => each !== missing);
      const edit: Edit = { edit: 'set-on-while', layer: at.layer, onWhile: left.length >= 2 ? left : null };
      const name = layerWords(keymap, at.layer);
      return {
        words: name,
        about: { layers: [at.layer] },
        mend: { title: `Let ${name} not wait for it`, edits: [edit] },
      };
    }
    case 'note-key':
    case 'note-layer':
    case 'note-chord':
      return inNote(keymap, at, missing);
    case 'chord-action':
    case 'chord-hold':
    case 'chord-key':
    case 'chord-layer':
      return inChord(keymap, at.where, at.chord, missing);
  }
}

/** A note keeps what it says; only what is missing goes from what it is about. */
function inNote(keymap: Keymap, { where, note }: NoteReference, missing: string) {
  const keys = (noteById(keymap, note)?.keys ?? []).filter((each) => each !== missing);
  const without: Readonly<Record<NoteReference['where'], NoteChange>> = {
    'note-key': { keys: keys.length > 0 ? keys : null },
    'note-layer': { layer: null },
    'note-chord': { chord: null },
  };
  const edit: Edit = { edit: 'change-diary-note', note, to: without[where] };
  return { words: 'a note of the diary', about: {}, mend: { title: 'Take the pin off', edits: [edit] } };
}

/** Leaves out what is missing as long as a chord is left; otherwise the chord goes. */
function inChord(
  keymap: Keymap,
  where: 'chord-action' | 'chord-hold' | 'chord-key' | 'chord-layer',
  chordId: ChordId,
  missing: string,
): { words: string; about: About; mend: Mend } {
  const chord = keymap.chords?.find((each) => each.id === chordId);
  const name = `“${chord?.name ?? chordId}”`;
  const words = `the chord ${name}`;
  const about = { chords: [chordId] };
  const keys = (chord?.keys ?? []).filter((each) => each !== missing);
  const layers = (chord?.layers ?? []).filter((each) => each !== missing);
  if (where === 'chord-hold') {
    const edit: Edit = { edit: 'change-chord', chord: chordId, to: { hold: null } };
    return { words, about, mend: { title: `Take the hold off ${name}`, edits: [edit] } };
  }
  if (where === 'chord-key' && keys.length >= 2) {
    const edit: Edit = { edit: 'change-chord', chord: chordId, to: { keys } };
    return { words, about, mend: { title: `Leave it out of ${name}`, edits: [edit] } };
  }
  if (where === 'chord-layer' && layers.length >= 1) {
    const edit: Edit = { edit: 'change-chord', chord: chordId, to: { layers } };
    return { words, about, mend: { title: `Leave it out of ${name}`, edits: [edit] } };
  }
  return {
    words,
    about,
    mend: { title: `Delete ${name}`, edits: [{ edit: 'delete-chord', chord: chordId }] },
  };
}
