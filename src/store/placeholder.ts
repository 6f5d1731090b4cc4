import type { Keymap } from '../core/keymap/types.ts';

/** What the bench holds until a kept or new design is opened: the smallest keymap there is. It is never saved. */
export const PLACEHOLDER_ID = 'none';

export const placeholderKeymap: Keymap = {
  format: 'neutral-keymap',
  version: 1,
  name: 'No design open',
  board: {
    name: 'One key',
    keys: [
      {
        id: 'K1',
        x: 0,
        y: 0,
        rotation: 0,
        width: 18,
        height: 18,
        hand: 'left',
        finger: 'index',
        home: true,
      },
    ],
  },
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  layers: [{ id: 'base', name: 'Base', places: {} }],
};
