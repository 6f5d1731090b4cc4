import type { Binding, Keymap, Layer, ShiftedAction } from '../../core/keymap/types.ts';
import { drawnPlaces } from './notation.ts';
import { readyBoard } from './ready-board.ts';

const board = readyBoard('split-36', 'Thirty-six keys, two halves');

const LETTERS = `
  q  w  e  r  t    y  u  i  o  p
  a  s  d  f  g    h  j  k  l  '
  z  x  c  v  b    n  m  ,  .  /
  ShiftLeft  Space⇩@moves  Backspace    Enter  @signs  Tab`;

const MOVES = `
  ·         ·        ·            ·          ·    PageUp    Home       ArrowUp    End         Insert
  MetaLeft  AltLeft  ControlLeft  ShiftLeft  ·    PageDown  ArrowLeft  ArrowDown  ArrowRight  Delete
  ·         ·        ·            ·          ·    ·         ·          ·          ·           ·
  ·  ·  ·    ·  ·  ·`;

const SIGNS = `
  1  2  3  4  5    6  7  8  9  0
  !  @  #  $  %    ^  &  *  (  )
  \`  ~  <  >  |    -  =  [  ]  \\
  ·  ·  ·    ·  ·  ·`;

/** What comes in place of a tap while Shift is on. */
const UNDER_SHIFT: readonly (readonly [tap: string, shifted: ShiftedAction])[] = [
  [',', { do: 'char', char: ';' }],
  ['.', { do: 'char', char: ':' }],
  ['Backspace', { do: 'key', code: 'Delete' }],
];

function withShifted(places: Layer['places']): Layer['places'] {
  const named = ({ tap }: Binding) => (tap?.do === 'char' ? tap.char : tap?.do === 'key' ? tap.code : '');
  return Object.fromEntries(
    Object.entries(places).map(([key, binding]) => {
      const onShift = UNDER_SHIFT.find(([tap]) => tap === named(binding))?.[1];
      return [key, onShift === undefined ? binding : { ...binding, onShift }];
    }),
  );
}

/** Held with nothing pressed meanwhile it is still a space; what is pressed inside makes it the layer at once. */
const layerKey = (word: string): Partial<Binding> =>
  word.includes('⇩')
    ? { holdAfterMs: 180, holdBy: 'press-inside', quietBeforeMs: 120, tapIfAlone: true }
    : {};

const NOTES = `The ledger of a small kiln: temperatures, hours, glazes; a board of the later kind of keys.

Shift turns comma and full stop into semicolon and colon, and Backspace into Delete. S and D together are Escape, and held they are Control, down until the last of them is up. J and K give the last output again, the keys above them Shift for one word, for the names of glazes. Space, held long and let go alone, is still a space.

Findings left in it:
- need-clumsy [L23 L33]: D holds Control, and C lies below it under the same finger.
- need-missing [key:F5]: the ledger is loaded anew with it, once a day; it has no key yet.`;

/** Shows what the later fields are for. */
export const kilnLedger: Keymap = {
  $schema: 'neutral-keymap.schema.json',
  format: 'neutral-keymap',
  version: 1,
  name: 'Kiln ledger, 36 keys',
  notes: NOTES,
  board,
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  needs: {
    lists: ['ascii', 'editing'],
    own: ['key:Escape', 'key:F5', 'shortcut:Control+KeyC', 'shortcut:Control+KeyV'],
    waived: [],
  },
  layers: [
    { id: 'letters', name: 'Letters', places: withShifted(drawnPlaces(board, LETTERS, layerKey)) },
    { id: 'moves', name: 'Moves', places: drawnPlaces(board, MOVES) },
    { id: 'signs', name: 'Signs', places: drawnPlaces(board, SIGNS) },
  ],
  chords: [
    {
      id: 'escape',
      name: 'Escape, held Control',
      keys: ['L23', 'L24'],
      windowMs: 45,
      layers: ['letters'],
      quietBeforeMs: 100,
      release: 'last-up',
      action: { do: 'key', code: 'Escape' },
      hold: { do: 'key', code: 'ControlLeft' },
      holdAfterMs: 180,
      holdBy: 'press-inside',
    },
    {
      id: 'again',
      name: 'Again',
      keys: ['R22', 'R23'],
      windowMs: 45,
      layers: ['letters'],
      quietBeforeMs: 100,
      action: { do: 'repeat' },
    },
    {
      id: 'word',
      name: 'Shift for one word',
      keys: ['R12', 'R13'],
      windowMs: 45,
      layers: ['letters'],
      quietBeforeMs: 100,
      action: { do: 'word-shift' },
    },
  ],
};
