import type { Board, BoardKey, Keymap } from '../../core/keymap/types.ts';
import { drawnPlaces } from './notation.ts';
import { readyBoard } from './ready-board.ts';

const ready = readyBoard('split-36', 'Thirty-six keys, two of them misplaced');

/** The left little finger's lower key lies far out, and the right outer thumb key half on its neighbour. */
function misplaced(key: BoardKey): BoardKey {
  if (key.id === 'L35') return { ...key, x: key.x - 40 };
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

/** Everything that the validator has to say, once. */
export const boxOfFaults: Keymap = {
  $schema: 'neutral-keymap.schema.json',
  format: 'neutral-keymap',
  version: 1,
  name: 'Box of faults, 36 keys',
  notes: '',
  board,
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  needs: { lists: [], own: ['a', 'A', ';', 'key:ArrowLeft', 'key:Pause'], waived: [] },
  layers: [
    { id: 'letters', name: 'Letters', places: drawnPlaces(board, LETTERS) },
    { id: 'moves', name: 'Moves', places: drawnPlaces(board, MOVES) },
    { id: 'knack', name: 'Knack', places: drawnPlaces(board, KNACK) },
    { id: 'pit', name: 'Pit', places: drawnPlaces(board, PIT) },
    { id: 'attic', name: 'Attic', places: {} },
  ],
  chords: [],
};
