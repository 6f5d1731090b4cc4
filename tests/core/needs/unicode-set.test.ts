import { describe, expect, test } from 'vitest';
import { unicodeSetMembers } from '../../../src/build/tables/unicode-set.ts';

/** UTS 35, part 3, "Unicode Sets", as far as CLDR's exemplar characters go. */
describe('members of a set', () => {
  test.each([
    ['[]', []],
    ['[a b c]', ['a', 'b', 'c']],
    ['[aä b]', ['a', 'ä', 'b']],
    ['[a-e]', ['a', 'b', 'c', 'd', 'e']],
    ['[\\- a]', ['-', 'a']],
    ['[\\[ \\] \\{ \\} \\\\ \\&]', ['[', ']', '{', '}', '\\', '&']],
    ['[{ch} h]', ['ch', 'h']],
    ['[\\u0041]', ['A']],
    ['[\u00a0 0]', ['\u00a0', '0']],
    ['[a \u200e b]', ['a', 'b']],
    ['[𝄞 a]', ['𝄞', 'a']],
  ])('%s', (set, members) => {
    expect(unicodeSetMembers(set)).toEqual(members);
  });

  test('a text without brackets is no set', () => {
    expect(() => unicodeSetMembers('abc')).toThrow('no set');
  });
});
