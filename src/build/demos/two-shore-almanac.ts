import type { Binding, Keymap } from '../../core/keymap/types.ts';
import { drawnPlaces } from './notation.ts';
import { readyBoard } from './ready-board.ts';

const board = readyBoard('split-42', 'Forty-two keys, two halves');

/** Keys that are a hold beside something else than a letter: what is pressed inside makes them a hold at once. */
const holdTiming = (word: string): Partial<Binding> =>
  word.includes('⇩') ? { holdAfterMs: 180, holdBy: 'press-inside', quietBeforeMs: 100 } : {};

const LETTERS = `
  Tab               q  w  e  r  t    y  u  i  o  p  Backspace
  Escape⇩MetaLeft   a  s  d  f  g    h  j  k  l  ;  '
  ShiftLeft         z  x  c  v  b    n  m  ,  .  /  ShiftRight
  ControlLeft       @moves     Space   Enter⇩AltLeft  @signs  AltRight`;

const MOVES = `
  ·        F1         F2        F3           F4   F5     PageUp    Home       ArrowUp    End         Insert           ·
  AltLeft  ShiftLeft  MetaLeft  ControlLeft  F11  F12    PageDown  ArrowLeft  ArrowDown  ArrowRight  ControlLeft+KeyA ContextMenu
  ·        F6         F7        F8           F9   F10    Delete    ControlLeft+KeyZ ControlLeft+KeyX ControlLeft+KeyC ControlLeft+KeyV ·
  ·        ·          ·                                  ·         ·          ·`;

const SIGNS = `
  \`  1  2  3  4  5    6  7  8  9  0   -
  ~   !  @  #  $  %    ^  &  *  (  )   =
  ·   „  ”  –  —  …    {  }  [  ]  \\  ·
  ·   ·  ·             ·  ·  ·`;

const NOTES = `Two people on two shores of one water write an almanac in Polish and English; this is the board of the one who sets it.

The computer reads the keys as XKB's pl, so the right outer thumb key (its AltGr) with a letter gives the Polish one. Modifiers are keys of their own or the hold of Escape and Enter, never of a letter. Three keys of the left home row latch Shift for the next letter; three of the right write the Polish word for high tide.

Findings left in it:
- need-clumsy [RT2 RT3]: € is AltGr and 5, and one thumb holds both Signs and AltGr.`;

/** Polish and English on one board: the host layout has the Polish letters on its third level. */
export const twoShoreAlmanac: Keymap = {
  $schema: 'neutral-keymap.schema.json',
  format: 'neutral-keymap',
  version: 1,
  name: 'Two-shore almanac, 42 keys',
  notes: NOTES,
  board,
  hosts: [{ system: 'linux', layout: 'pl', variant: '' }],
  needs: {
    lists: ['ascii', 'editing', 'shortcuts', 'cldr:pl:letters', 'cldr:en:letters'],
    own: ['„', '”', '–', '—', '…', '€'],
    waived: [],
  },
  layers: [
    { id: 'letters', name: 'Letters', places: drawnPlaces(board, LETTERS, holdTiming) },
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
