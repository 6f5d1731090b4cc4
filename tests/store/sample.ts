import type { BoardKey, Keymap } from '../../src/core/keymap/types.ts';

const boardKey = (id: string, x: number, home = false): BoardKey => ({
  id,
  x,
  y: 0,
  rotation: 0,
  width: 18,
  height: 18,
  hand: 'left',
  finger: 'index',
  home,
});

/** Four keys in a row, two layers and a chord: enough for everything that can vanish. */
export const sample: Keymap = {
  format: 'neutral-keymap',
  version: 1,
  name: 'Four keys',
  board: {
    name: 'A row',
    keys: [boardKey('A', 0, true), boardKey('B', 20), boardKey('C', 40), boardKey('D', 60)],
  },
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  layers: [
    {
      id: 'base',
      name: 'Base',
      places: {
        A: { tap: { do: 'char', char: 'a' } },
        B: { tap: { do: 'char', char: 'b' }, hold: { do: 'layer', layer: 'signs', mode: 'while-held' } },
      },
    },
    { id: 'signs', name: 'Signs', places: { A: { tap: { do: 'char', char: '!' } } } },
  ],
  chords: [{ id: 'c1', keys: ['A', 'C'], windowMs: 40, action: { do: 'key', code: 'Tab' } }],
};
