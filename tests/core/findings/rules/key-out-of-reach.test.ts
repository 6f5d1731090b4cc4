import { describe, expect, it } from 'vitest';
import { keyOutOfReach } from '../../../../src/core/findings/rules/key-out-of-reach.ts';
import type { BoardKey } from '../../../../src/core/keymap/types.ts';
import { BOARD, inShort, says } from '../design.ts';

const layers = { base: 'a b c d e f g h i j x' };
const home = BOARD.keys[0];
/** The ten keys, the one of L1's finger so far above its home key. */
const withKeyAbove = (mm: number, more: Partial<BoardKey> = {}) => {
  if (home === undefined) throw new Error('no key');
  const far = { ...home, id: 'F', y: home.y - mm, home: false, ...more };
  return says(keyOutOfReach, { board: { ...BOARD, keys: [...BOARD.keys, far] }, layers });
};

describe('key-out-of-reach', () => {
  it('says so of a key three rows from its finger’s home key', () => {
    const found = withKeyAbove(57.15);
    expect(inShort(found)).toEqual(['out-of-reach | F L1 |  | ']);
    expect(found[0]).toMatchObject({ severity: 'note', data: { mm: 57, limitMm: 45 } });
  });

  it.each([
    ['two rows up and one column aside at full pitch', () => withKeyAbove(42.6)],
    ['at the limit itself', () => withKeyAbove(45)],
  ])('keeps quiet %s', (_, find) => {
    expect(find()).toEqual([]);
  });

  it('keeps quiet where a finger has no home key to measure from', () => {
    const keys = BOARD.keys.map((key) => ({ ...key, home: false, x: key.x * 4 }));
    expect(
      says(keyOutOfReach, { board: { ...BOARD, keys }, layers: { base: 'a b c d e f g h i j' } }),
    ).toEqual([]);
  });
});
