import type { Action, Chord, KeyId } from '../../core/keymap/types.ts';

const COLUMNS: readonly (readonly number[])[] = [
  [1, 2],
  [2, 3],
  [3, 4],
  [4, 5],
  [2, 3, 4],
];

const ACTIONS: readonly Action[] = [
  { do: 'key', code: 'Tab' },
  { do: 'key', code: 'Escape' },
  { do: 'key', code: 'Enter' },
  { do: 'key', code: 'KeyC', with: ['ControlLeft'] },
  { do: 'key', code: 'KeyV', with: ['ControlLeft'] },
  { do: 'char', char: '"' },
  { do: 'char', char: '(' },
  { do: 'char', char: ')' },
  { do: 'text', text: 'the ' },
  { do: 'modifier', code: 'ControlLeft', mode: 'latch' },
];

function keysOf(hand: 'L' | 'R', row: number, columns: readonly number[]): KeyId[] {
  return columns.map((column) => `${hand}${row}${column}`);
}

/**
 * Thirty chords on the board of 42 keys: per half and row the four pairs of neighbours and the three middle fingers.
 * So pairs lie inside triples, and most letters belong to several. Every third is live on all layers.
 */
export function benchChords(): Chord[] {
  const chords: Chord[] = [];
  for (const hand of ['L', 'R'] as const)
    for (const row of [1, 2, 3])
      for (const columns of COLUMNS) {
        const index = chords.length;
        chords.push({
          id: `chord-${index + 1}`,
          keys: keysOf(hand, row, columns),
          windowMs: 30 + 5 * (index % 4),
          quietBeforeMs: row === 2 ? 150 : 0,
          ...(index % 3 === 0 ? {} : { layers: ['base'] }),
          action: ACTIONS[index % ACTIONS.length] ?? { do: 'nothing' },
        });
      }
  return chords;
}
