import type { Keymap } from '../../core/keymap/types.ts';
import { drawnPlaces } from './notation.ts';
import { readyBoard } from './ready-board.ts';

const board = readyBoard('split-42', 'Forty-two keys, two halves');

const LETTERS = `
  Tab             q  w  e  r  t    y  u  i  o  p  Backspace
  Escape          a  s  d  f  g    h  j  k  l  ;  '
  ShiftLeft       z  x  c  v  b    n  m  ,  .  /  ShiftRight
  ControlLeft     @moves   Space   Enter   @signs  AltRight`;

const MOVES = `
  ·        F1         F2        F3           F4   F5     PageUp    Home       ArrowUp    End         Insert      Delete
  AltLeft  ShiftLeft  MetaLeft  ControlLeft  F11  F12    PageDown  ArrowLeft  ArrowDown  ArrowRight  ControlLeft+KeyA ContextMenu
  ·        F6         F7        F8           F9   F10    ControlLeft+KeyZ ControlLeft+KeyX ControlLeft+KeyC ControlLeft+KeyV ControlLeft+KeyF ·
  ·        ·          ·                                  ·         ·          ·`;

const SIGNS = `
  \`  1  2  3  4  5    6  7  8  9  0   -
  ~   !  @  #  $  %    ^  &  *  (  )   =
  ·   „  ”  –  —  …    {  }  [  ]  \\  |
  ·   ·  ·             ·  ·  ·`;

/** Polish and English on one board: the host layout has the Polish letters on its third level. */
export const twoShoreAlmanac: Keymap = {
  $schema: 'neutral-keymap.schema.json',
  format: 'neutral-keymap',
  version: 1,
  name: 'Two-shore almanac, 42 keys',
  notes: '',
  board,
  hosts: [{ system: 'linux', layout: 'pl', variant: '' }],
  needs: { lists: ['ascii', 'editing', 'shortcuts', 'cldr:pl', 'cldr:en'], own: [], waived: [] },
  layers: [
    { id: 'letters', name: 'Letters', places: drawnPlaces(board, LETTERS) },
    { id: 'moves', name: 'Moves', places: drawnPlaces(board, MOVES) },
    { id: 'signs', name: 'Signs', places: drawnPlaces(board, SIGNS) },
  ],
  chords: [
    {
      id: 'capital',
      name: 'Next letter capital',
      keys: ['L22', 'L23', 'L24'],
      windowMs: 55,
      layers: ['letters'],
      quietBeforeMs: 80,
      action: { do: 'modifier', code: 'ShiftLeft', mode: 'latch' },
    },
    {
      id: 'high-tide',
      name: 'High tide in Polish',
      keys: ['R22', 'R23', 'R24'],
      windowMs: 55,
      layers: ['letters'],
      quietBeforeMs: 80,
      action: { do: 'text', text: 'przypływ' },
    },
  ],
};
