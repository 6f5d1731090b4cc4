import fc from 'fast-check';
import { expect, test } from 'vitest';
import { fitted, readNumber } from '../../../src/ui/widgets/number-text.ts';

const window = { min: 5, max: 200, step: 5 };

test.each([
  [47, 45],
  [48, 50],
  [-3, 5],
  [999, 200],
])('%d is fitted to %d', (value, expected) => {
  expect(fitted(value, window)).toBe(expected);
});

test('a step of tenths leaves no tail of binary figures', () => {
  expect(fitted(0.3, { min: 0, max: 1, step: 0.1 })).toBe(0.3);
});

test('what is fitted stays as it is', () => {
  fc.assert(
    fc.property(fc.double({ noNaN: true, min: -1e6, max: 1e6 }), (value) => {
      const once = fitted(value, window);
      expect(once).toBeGreaterThanOrEqual(window.min);
      expect(once).toBeLessThanOrEqual(window.max);
      expect(fitted(once, window)).toBe(once);
    }),
  );
});

test.each([
  ['45', 45],
  [' 45 ', 45],
  ['45,5', 45.5],
  ['47', 47],
])('%o is read as %d', (text, value) => {
  expect(readNumber(text, window)).toEqual({ value });
});

test.each(['', 'many', '4', '201', '1e999', '4 5'])('%o is refused with a sentence', (text) => {
  expect(readNumber(text, window)).toEqual({ problem: expect.stringMatching(/\.$/) });
});
