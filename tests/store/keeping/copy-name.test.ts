import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LIMITS } from '../../../src/core/keymap/limits.ts';
import { copyName } from '../../../src/store/keeping/copy-name.ts';

test.each([
  ['Reed', [], 'Reed, copy'],
  ['Reed', ['Reed, copy'], 'Reed, copy 2'],
  ['Reed, copy', ['Reed, copy'], 'Reed, copy 2'],
  ['Reed, copy 2', ['Reed, copy', 'Reed, copy 2'], 'Reed, copy 3'],
  ['Reed, copyist', [], 'Reed, copyist, copy'],
])('a copy of %o beside %o', (name, taken, expected) => {
  expect(copyName(name, taken)).toBe(expected);
});

test('a copy of any name is a name that is free', () => {
  const name = fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 });
  fc.assert(
    fc.property(name, fc.array(name), (original, others) => {
      const taken = [original, ...others, copyName(original, others)];
      const copy = copyName(original, taken);
      expect(taken).not.toContain(copy);
      expect([...copy].length).toBeLessThanOrEqual(LIMITS.nameLength);
    }),
    { numRuns: 300 },
  );
});

test('a long name is cut so that the copy fits', () => {
  const copy = copyName('n'.repeat(LIMITS.nameLength), []);
  expect(copy).toHaveLength(LIMITS.nameLength);
  expect(copy.endsWith(', copy')).toBe(true);
});
