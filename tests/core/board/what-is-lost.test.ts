import { describe, expect, test } from 'vitest';
import { whatIsLost } from '../../../src/core/board/what-is-lost.ts';
import { A, B, chord, layer, small } from '../keymap/small.ts';

const NOTE = { text: 'stiff', writtenAt: '2026-05-04T18:30:00Z', state: 's1', tickedOff: false };
const DESIGN = {
  ...small(
    [layer('base', { k1: { tap: A }, k2: { tap: B } }), layer('sym', { k1: { hold: B } })],
    [chord('two', ['k1', 'k2'], { name: 'Two' }), chord('three', ['k1', 'k3', 'k4'])],
  ),
  diary: [
    { id: 'n1', ...NOTE, keys: ['k1'] },
    { id: 'n2', ...NOTE },
  ],
};

describe('what another board takes from a design', () => {
  test('nothing where every key becomes one', () => {
    const same = Object.fromEntries(DESIGN.board.keys.map(({ id }) => [id, id]));
    expect(whatIsLost(DESIGN, same)).toEqual({
      keptBindings: 3,
      lostBindings: 0,
      keys: [],
      chords: [],
      notes: 0,
    });
  });

  test('is told in words, with keys that have nothing on them left out', () => {
    const losses = whatIsLost(DESIGN, { k2: 'k1', k3: 'k2', k4: 'k3' });
    expect(losses.keptBindings).toBe(1);
    expect(losses.lostBindings).toBe(2);
    expect(losses.keys.map(({ key, bindings }) => [key, bindings.map((one) => one.layer)])).toEqual([
      ['k1', ['Base', 'SYM']],
    ]);
    expect(losses.chords.map(({ name, goes, lost }) => [name, goes, lost.length])).toEqual([
      ['Two', true, 1],
      ['three', false, 1],
    ]);
    expect(losses.notes).toBe(1);
  });
});
