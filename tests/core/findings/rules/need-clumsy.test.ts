import { describe, expect, it } from 'vitest';
import { needClumsy } from '../../../../src/core/findings/rules/need-clumsy.ts';
import type { Board } from '../../../../src/core/keymap/types.ts';
import { BOARD, inShort, says } from '../design.ts';

/** The ten keys without the right hand's outer two, and one more for the left index finger right of its home key. */
const board: Board = {
  ...BOARD,
  keys: [
    ...BOARD.keys.filter((key) => key.id !== 'R1' && key.id !== 'R2'),
    { id: 'L5', x: 72, y: 0, rotation: 0, width: 17, height: 16, hand: 'left', finger: 'index', home: false },
  ],
};
const layersWith = (up: string) => ({ base: 'a b c @up e f g h i', up });

describe('need-clumsy', () => {
  it('says so when the finger that holds the layer must press the key', () => {
    const found = says(needClumsy, { board, layers: layersWith('· · · · ! · · · ·'), needs: ['!', 'a'] });
    expect(inShort(found)).toEqual(['one-finger-holds-and-presses | L4 L5 |  | ']);
    expect(found[0]).toMatchObject({ severity: 'risky', data: { need: '!', presses: 2, holds: 1 } });
  });

  it('says so when the finger that holds Shift must press the letter', () => {
    const layers = { base: 'a b c ShiftLeft e f g h i' };
    expect(says(needClumsy, { board, layers, needs: ['E'] }).map(({ data }) => data.need)).toEqual(['E']);
  });

  it.each([
    ['another finger presses it', { layers: layersWith('! · · · · · · · ·'), needs: ['!'] }],
    [
      'the layer is locked',
      { layers: { base: 'a b c @up:lock e f g h i', up: '· · · · ! · · · ·' }, needs: ['!'] },
    ],
    ['it is missing', { layers: layersWith('· · · · · · · · ·'), needs: ['!'] }],
    ['nobody asks for it', { layers: layersWith('· · · · ! · · · ·') }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(needClumsy, { board, ...sketch })).toEqual([]);
  });
});
