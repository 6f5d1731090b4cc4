import { keyName } from '../board/key-name.ts';
import { actionWords } from '../keymap/action-words.ts';
import { chordsOf } from '../keymap/timing.ts';
import type { ChordId, Keymap } from '../keymap/types.ts';
import type { ComfortReason } from './comfort.ts';
import type { Conflict } from './conflicts.ts';
import type { ChordSuggestion } from './suggest-chords.ts';

/** A reason in words, and which way it speaks. */
export interface Reason {
  readonly text: string;
  readonly speaks: 'for' | 'against';
}

const COMFORT: Readonly<Record<ComfortReason, Reason>> = {
  'home-row': { text: 'home row', speaks: 'for' },
  'same-row': { text: 'same row', speaks: 'for' },
  'neighbouring-fingers': { text: 'neighbouring fingers', speaks: 'for' },
  'with-thumb': { text: 'with thumb', speaks: 'for' },
  'finger-twice': { text: 'one finger on two keys', speaks: 'against' },
  'rows-apart': { text: 'rows apart', speaks: 'against' },
  'off-the-finger-s-column': { text: "off the finger's column", speaks: 'against' },
  'little-finger': { text: 'little finger', speaks: 'against' },
  'two-hands': { text: 'two hands', speaks: 'against' },
};

/** What speaks for and against a set of keys, in the order in which it was found. */
export function reasonsOf(
  keymap: Keymap,
  { comfort, conflicts, like, near }: Pick<ChordSuggestion, 'comfort' | 'conflicts' | 'like' | 'near'>,
): readonly Reason[] {
  const against = (text: string): Reason => ({ text, speaks: 'against' });
  return [
    ...comfort.map((reason) => COMFORT[reason]),
    ...conflicts.map((conflict) => against(conflictWords(keymap, conflict))),
    ...like.map((id) => against(`the shape of the chord ${chordWords(keymap, id)}`)),
    ...near.map((id) => against(`one key beside the chord ${chordWords(keymap, id)}`)),
  ];
}

function conflictWords(keymap: Keymap, conflict: Conflict): string {
  switch (conflict.what) {
    case 'larger-chord':
      return `waits for the larger chord ${chordWords(keymap, conflict.chord)}`;
    case 'smaller-chord':
      return `makes the smaller chord ${chordWords(keymap, conflict.chord)} wait`;
    case 'hold-tap':
      return `${keyName(keymap.board, conflict.key)} has a hold`;
    case 'held-key':
      return `${keyName(keymap.board, conflict.key)} is held for other keys`;
  }
}

/** A chord by its name, else by what it gives. */
function chordWords(keymap: Keymap, id: ChordId): string {
  const chord = chordsOf(keymap).find((each) => each.id === id);
  return chord === undefined ? id : (chord.name ?? actionWords(keymap, chord.action));
}
