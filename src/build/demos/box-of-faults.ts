import type { Code } from '../../core/keymap/codes.ts';
import type { Board, BoardKey, Chord, Keymap } from '../../core/keymap/types.ts';
import { drawnPlaces } from './notation.ts';
import { readyBoard } from './ready-board.ts';

const ready = readyBoard('split-36', 'Thirty-six keys, two of them misplaced');

/** The left little finger's lower key lies far out, and the right outer thumb key half on its neighbour. */
function misplaced(key: BoardKey): BoardKey {
  if (key.id === 'L35') return { ...key, x: key.x - 48 };
  return key.id === 'RT3' ? { ...key, x: key.x - 12, y: key.y + 3 } : key;
}

// No `madeFrom`: no parameters make this board.
const board: Board = { name: ready.name, keys: ready.keys.map(misplaced) };

const LETTERS = `
  q          w  e  r         t     y           u  i  o  p
  a          s  d  f⇩@knack  g     h           j  k  l  '
  z          x  c  v         b     n           m  ,  .  /
  @pit:lock  Space⇩@moves    ShiftLeft    Backspace  Enter  ·`;

const MOVES = `
  ·           ·        ·        ·  ·    Home       PageDown   PageUp   End         Insert
  AltLeft     ·        ·        ·  ·    ArrowLeft  ArrowDown  ArrowUp  ArrowRight  Delete
  ·           ·        ·        ·  ·    Tab        Tab        Tab      Tab         ł
  Escape      Escape            ControlLeft    ·   ·          ·`;

const KNACK = `
  ·  ·  ·  ·  ;    ·  ·  ·  ·  ·
  ·  ·  ·  ·  ·    ·  ·  ·  ·  ·
  ·  ·  ·  ·  ·    ·  ·  ·  ·  ·
  ·  ·     ·       ·  ·     ·`;

const PIT = `
  1  2  3  4  5    6  7  8  9  0
  ·  ·  ·  ·  ·    ·  ·  ·  ·  ·
  ·  ·  ·  ·  ·    ·  ·  ·  ·  ·
  -  ·     ·       ·  ·     ·`;

/** A chord of the letters that gives a shortcut. */
function chord(id: string, name: string, keys: readonly string[], windowMs: number, code: Code): Chord {
  return {
    id,
    name,
    keys,
    windowMs,
    layers: ['letters'],
    action: { do: 'key', code, with: ['ControlLeft'] },
  };
}

const NOTES = `Nobody types on this one: it shows everything that the validator has to say of a design, each once. Only a reference to something that does not exist is not in it, since a file with one is not opened; and what typing sets off, which hangs on the typist and the text.

Findings left in it:
- caps-overlap [RT2 RT3]: the outer thumb key was drawn half on its neighbour.
- character-without-route [moves R35]: the host layout us has no ł.
- chord-never-fires [stuck moves LT2 R21]: one of its keys holds the layer on which it is live.
- chords-with-same-keys [second first letters L32 L33]: Copy came after Cut.
- key-out-of-reach [L35 L25]: the little finger's lower key once more.
- key-unreachable [moves LT2]: Escape lies where the finger already holds Moves.
- layer-never-entered [attic]: no key leads up there.
- layer-without-way-back [pit LT3]: a minus covers the key that locked it.
- need-missing [key:Pause]: asked for, and nowhere.
- chord-too-wide-for-hand [wide L12 L35]: the little finger's lower key lies far out.
- chord-window-outside-hands [slow R32 R33]: 150 ms.
- need-clumsy [L22 L11]: the semicolon wants the index finger twice.
- chord-inside-chord [small large letters R12 R13]: Undo waits for Redo.
- chord-uses-hold-tap [holding L22]: F is a hold too.
- chord-wants-one-finger-twice [edge R21 R22]: both are the index finger's.
- key-without-binding [RT3]: the misplaced key does nothing.
- letter-hold-unprotected [letters L22]: F again.
- modifier-missing [key:MetaLeft]: there is no Meta.
- need-bound-many-times [moves R31 R32 R33 R34]: four times Tab.
- need-list-unknown [harbour-signals]: no list has that name.
- waiver-not-needed [b]: let off, though it can be typed.
- diary-note-open [letters R35]: a note that nobody has ticked off.`;

/** Everything that the validator has to say of a design, once. */
export const boxOfFaults: Keymap = {
  $schema: 'neutral-keymap.schema.json',
  format: 'neutral-keymap',
  version: 1,
  name: 'Box of faults, 36 keys',
  notes: NOTES,
  board,
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  needs: {
    lists: ['harbour-signals'],
    own: ['a', 'A', 'b', ';', 'key:ArrowLeft', 'key:Pause'],
    waived: [{ need: 'b', why: 'no word on the box has one' }],
  },
  layers: [
    { id: 'letters', name: 'Letters', places: drawnPlaces(board, LETTERS) },
    { id: 'moves', name: 'Moves', places: drawnPlaces(board, MOVES) },
    { id: 'knack', name: 'Knack', places: drawnPlaces(board, KNACK) },
    { id: 'pit', name: 'Pit', places: drawnPlaces(board, PIT) },
    { id: 'attic', name: 'Attic', places: {} },
  ],
  chords: [
    chord('small', 'Undo', ['R12', 'R13'], 45, 'KeyZ'),
    chord('large', 'Redo', ['R12', 'R13', 'R14'], 65, 'KeyY'),
    { ...chord('stuck', 'Open', ['LT2', 'R21'], 55, 'KeyO'), layers: ['moves'] },
    chord('wide', 'New', ['L35', 'L12'], 50, 'KeyN'),
    chord('holding', 'Find', ['L22', 'L23'], 45, 'KeyF'),
    chord('edge', 'Print', ['R21', 'R22'], 50, 'KeyP'),
    chord('slow', 'Select all', ['R32', 'R33'], 150, 'KeyA'),
    chord('first', 'Cut', ['L32', 'L33'], 45, 'KeyX'),
    chord('second', 'Copy', ['L32', 'L33'], 45, 'KeyC'),
  ],
  diary: [
    {
      id: 'slash',
      text: 'The slash is too far for the little finger.',
      keys: ['R35'],
      layer: 'letters',
      writtenAt: '2031-02-03T19:20:00Z',
      state: 'first-evening',
      tickedOff: false,
    },
  ],
};
