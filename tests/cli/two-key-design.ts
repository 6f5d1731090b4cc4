import type { Keymap } from '../../src/core/keymap/types.ts';

const key = (id: string, x: number, finger: 'index' | 'thumb') =>
  ({ id, x, y: 0, rotation: 0, width: 18, height: 17, hand: 'left', finger, home: false }) as const;

/** A letter key `A` and a thumb key `T` that is Space or, held, the layer with `1` and `ł`. */
export const twoKeyDesign: Keymap = {
  format: 'neutral-keymap',
  version: 1,
  name: 'Two keys',
  board: { name: 'Three', keys: [key('A', 0, 'index'), key('B', 20, 'index'), key('T', 60, 'thumb')] },
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  layers: [
    {
      id: 'base',
      name: 'Base',
      places: {
        A: { tap: { do: 'char', char: 'a' } },
        B: { tap: { do: 'key', code: 'ShiftLeft' } },
        T: {
          tap: { do: 'key', code: 'Space' },
          hold: { do: 'layer', layer: 'up', mode: 'while-held' },
          holdBy: 'press-inside',
        },
      },
    },
    {
      id: 'up',
      name: 'Up',
      places: { A: { tap: { do: 'char', char: '1' } }, B: { tap: { do: 'char', char: 'ł' } } },
    },
  ],
  chords: [],
};
