import type { Keymap } from '../../../src/core/keymap/types.ts';

const key = (id: string, x: number, finger: 'index' | 'middle' | 'thumb', y = 0) =>
  ({ id, x, y, rotation: 0, width: 18, height: 17, hand: 'left', finger, home: finger !== 'thumb' }) as const;

/** Three keys, three layers and a chord: one of everything that a worksheet has words for. */
export const smallDesign: Keymap = {
  format: 'neutral-keymap',
  version: 1,
  name: 'Seed drawer | *two*',
  notes: 'First paragraph,\nstill the first.\n\n- not a list',
  board: {
    name: 'Three keys',
    keys: [key('M', 0, 'middle'), key('I', 19, 'index'), key('T', 30, 'thumb', 40)],
  },
  hosts: [
    { system: 'linux', layout: 'us', variant: '' },
    { system: 'macos', layout: 'us', variant: 'mac' },
  ],
  timing: { holdAfterMs: 210, holdBy: 'tap-inside' },
  layers: [
    {
      id: 'base',
      name: 'Base',
      places: {
        M: {
          tap: { do: 'char', char: '{' },
          hold: { do: 'key', code: 'ControlLeft' },
          quietBeforeMs: 120,
          sameHandTaps: true,
        },
        I: { tap: { do: 'char', char: '-' } },
        T: {
          tap: { do: 'key', code: 'KeyC', with: ['ControlLeft'] },
          hold: { do: 'layer', layer: 'up', mode: 'while-held' },
        },
      },
    },
    {
      id: 'up',
      name: 'Up',
      places: {
        M: { tap: { do: 'char', char: 'ł' } },
        I: { tap: { do: 'text', text: 'Hi' }, hold: { do: 'nothing' } },
      },
    },
    {
      id: 'both',
      name: '=Both',
      onWhile: ['base', 'up'],
      places: {
        M: { tap: { do: 'modifier', code: 'ShiftLeft', mode: 'latch' } },
        I: { tap: { do: 'board', label: 'Radio 2' } },
        T: { tap: { do: 'key', code: 'Fn' } },
      },
    },
  ],
  chords: [
    {
      id: 'c1',
      keys: ['M', 'I'],
      windowMs: 45,
      layers: ['base', 'up'],
      quietBeforeMs: 90,
      action: { do: 'key', code: 'Tab' },
    },
    { id: 'c2', name: 'Say "yes"', keys: ['M', 'T'], windowMs: 50, action: { do: 'char', char: ' ' } },
  ],
};
