import { parametricBoard } from '../../../src/core/board/parametric.ts';
import { READY_BOARDS } from '../../../src/core/board/ready-boards.ts';
import { boardRows } from '../../../src/core/board/rows.ts';
import type { Action, Binding, Chord, KeyId, Keymap } from '../../../src/core/keymap/types.ts';

const ready = READY_BOARDS.find(({ id }) => id === 'split-36');
if (ready === undefined) throw new Error('The board of 36 keys is gone.');
export const board36 = parametricBoard(ready.madeFrom, 'Plain');

const ROWS = ['QWERTYUIOP', 'ASDFGHJKL;', 'ZXCVBNM,./'];
const [, , , thumbs = []] = boardRows(board36);

/** The keys of the letters on a plain QWERTY base layer. */
export const keyOf: ReadonlyMap<string, KeyId> = new Map(
  ROWS.flatMap((row, at) =>
    [...row].map((char, place): [string, KeyId] => [char, boardRows(board36)[at]?.[place] ?? '']),
  ),
);

const tapOf = (char: string): Action => ({ do: 'char', char: char.toLowerCase() });

/** A plain QWERTY base layer on 36 keys: letters, Space and Shift under the thumbs, what is given besides. */
export function plainKeymap(
  holds: Readonly<Record<string, Partial<Binding>>> = {},
  chords: readonly Chord[] = [],
): Keymap {
  const letters = [...keyOf].map(([char, key]) => [key, { tap: tapOf(char), ...holds[char] }]);
  const [space = '', shift = '', enter = ''] = [thumbs[3], thumbs[2], thumbs[4]];
  return {
    format: 'neutral-keymap',
    version: 1,
    name: 'Plain',
    board: board36,
    hosts: [{ system: 'linux', layout: 'us', variant: '' }],
    layers: [
      {
        id: 'base',
        name: 'Base',
        places: {
          ...Object.fromEntries(letters),
          [space]: { tap: { do: 'key', code: 'Space' } },
          [shift]: { tap: { do: 'key', code: 'ShiftLeft' } },
          [enter]: { tap: { do: 'key', code: 'Enter' } },
        },
      },
    ],
    chords,
  };
}

/** A chord over letters that does Tab. */
export function chordOver(letters: string, windowMs: number, more: Partial<Chord> = {}): Chord {
  const keys = [...letters].map((letter) => keyOf.get(letter) ?? '');
  return { id: `chord-${letters}`, keys, windowMs, action: { do: 'key', code: 'Tab' }, ...more };
}
