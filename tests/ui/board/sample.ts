import { parametricBoard } from '../../../src/core/board/parametric.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import type { Binding, Board, Chord, Keymap, Layer } from '../../../src/core/keymap/types.ts';

/** The ready board of 36 keys. */
export function board36(): Board {
  const ready = READY_BOARDS.find(({ id }) => id === 'split-36');
  if (ready === undefined) throw new Error('the ready board of 36 keys is gone');
  return parametricBoard(ready.madeFrom, ready.title);
}

/** A tap of one character. */
export function char(char: string): Binding {
  return { tap: { do: 'char', char } };
}

/** A layer with some bindings. */
export function layer(id: string, name: string, places: Layer['places'] = {}): Layer {
  return { id, name, places };
}

/** A design on the 36 keys: a few bindings on two layers, and the chords given. */
export function design(layers?: readonly Layer[], chords: readonly Chord[] = []): Keymap {
  return {
    format: 'neutral-keymap',
    version: 1,
    name: 'Ferry timetable',
    board: board36(),
    hosts: [{ system: 'linux', layout: 'us', variant: '' }],
    layers: layers ?? [
      layer('base', 'Base', {
        R22: { tap: { do: 'char', char: 'j' }, hold: { do: 'key', code: 'ShiftLeft' } },
        R23: char('k'),
        LT1: { hold: { do: 'layer', layer: 'symbols', mode: 'while-held' } },
      }),
      layer('symbols', 'Symbols', { R22: char('('), R24: { tap: { do: 'nothing' } } }),
    ],
    chords,
  };
}

/** A chord of two home keys that gives Tab, live everywhere. */
export const TAB_CHORD: Chord = {
  id: 'c1',
  keys: ['R22', 'R23'],
  windowMs: 45,
  action: { do: 'key', code: 'Tab' },
};
