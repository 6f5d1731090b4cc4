import { describe, expect, it } from 'vitest';
import { needListUnknown } from '../../../../src/core/findings/rules/need-list-unknown.ts';
import { says } from '../design.ts';

const layers = { base: 'a b c d e f g h i j' };
const about = (lists: readonly string[]) =>
  says(needListUnknown, { layers, lists, needs: ['a', 'b'], waived: ['b'] });

describe('need-list-unknown', () => {
  it.each([
    [['no-such-list'], ['no-such-list']],
    [
      ['modifiers', 'one', 'ascii', 'other'],
      ['one', 'other'],
    ],
  ])('says so of %j', (lists, expected) => {
    expect(about(lists).map(({ data }) => data.list)).toEqual(expected);
  });

  it.each([
    [[]],
    [['ascii']],
    [['editing', 'function-keys', 'media', 'modifiers', 'shortcuts', 'shortcuts-macos']],
  ])('keeps quiet of %j', (lists) => {
    expect(about(lists)).toEqual([]);
  });

  it('offers nothing while needs are let off that this list may ask for', () => {
    const [found] = says(needListUnknown, { layers, lists: ['one'], waived: ['b'] });
    expect(found?.mends).toEqual([]);
  });

  it('offers to take the name off and to keep the rest', () => {
    expect(about(['modifiers', 'one'])[0]?.mends[0]?.edits).toEqual([
      {
        edit: 'set-needs',
        needs: { lists: ['modifiers'], own: ['a', 'b'], waived: [{ need: 'b', why: 'never used' }] },
      },
    ]);
  });
});
