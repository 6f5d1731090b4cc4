import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthText, shownLength } from '../../../src/store/settings/lengths.ts';

const PITCH = { value: 19.05, min: 10, max: 40, step: 0.05 };

test.each([
  ['mm', 19.05, '19.05 mm'],
  // Three quarters of an inch: full-size pitch, 19.05 mm.
  ['inch', 19.05, '0.75 in'],
  ['inch', -25.4, '-1 in'],
] as const)('in %s %d mm is %s', (units, mm, text) => {
  expect(lengthText(mm, units)).toBe(text);
});

test('a field in inches shows inches and keeps millimetres', () => {
  const shown = shownLength(PITCH, 'inch');
  expect(shown).toMatchObject({ unit: 'in', value: 0.75, step: 0.002 });
  expect(shown.mmOf(0.75)).toBe(19.05);
});

test('an angle is an angle in any units', () => {
  const shown = shownLength({ value: 8, min: -45, max: 45, step: 0.5, unit: '°' }, 'inch');
  expect([shown.unit, shown.value, shown.step, shown.mmOf(9)]).toEqual(['°', 8, 0.5, 9]);
});

test('what is kept never leaves the limits, and what is shown comes back as it was but for half a thousandth of an inch', () => {
  fc.assert(
    fc.property(fc.double({ min: 10, max: 40, noNaN: true }), (value) => {
      const shown = shownLength({ ...PITCH, value }, 'inch');
      expect(Math.abs(shown.mmOf(shown.value) - value)).toBeLessThan(0.0132);
      expect(shown.mmOf(shown.max)).toBeLessThanOrEqual(40);
      expect(shown.mmOf(shown.min)).toBeGreaterThanOrEqual(10);
    }),
  );
});
