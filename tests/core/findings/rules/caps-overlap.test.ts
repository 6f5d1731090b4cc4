import { describe, expect, it } from 'vitest';
import { capsOverlap } from '../../../../src/core/findings/rules/caps-overlap.ts';
import { BOARD, inShort, says } from '../design.ts';

const layers = { base: 'a b c d e f g h i j' };
/** The ten keys with L2 moved and turned. Caps are 17 mm wide, 18 mm apart. */
const about = (x: number, rotation = 0) =>
  says(capsOverlap, {
    board: { ...BOARD, keys: BOARD.keys.map((key) => (key.id === 'L2' ? { ...key, x, rotation } : key)) },
    layers,
  });

describe('caps-overlap', () => {
  it.each([
    ['one cap lies half on another', 9.5, 0, ['overlap | L1 L2 |  | '], 7.5],
    ['one cap lies on the next', 27, 0, ['overlap | L2 L3 |  | '], 8],
  ] as const)('says so when %s', (_, x, rotation, expected, depthMm) => {
    const found = about(x, rotation);
    expect(inShort(found)).toEqual(expected);
    expect(found[0]).toMatchObject({ severity: 'broken', data: { depthMm } });
  });

  it('says so of a turned cap whose corners reach into its neighbours', () => {
    expect(inShort(about(18, 30))).toEqual(['overlap | L1 L2 |  | ', 'overlap | L2 L3 |  | ']);
  });

  it.each([
    ['caps are apart', 18, 0],
    ['caps touch', 17, 0],
    ['a cap is turned where there is room', -30, 45],
  ] as const)('keeps quiet when %s', (_, x, rotation) => {
    expect(about(x, rotation)).toEqual([]);
  });
});
