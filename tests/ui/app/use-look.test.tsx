import { expect, test } from 'vitest';
import { themeOf } from '../../../src/ui/app/use-look.ts';

test.each([
  ['light', true, 'light'],
  ['dark', false, 'dark'],
  ['system', true, 'dark'],
  ['system', false, 'light'],
] as const)('chosen %s on a computer that is dark: %o comes to %s', (choice, isDark, expected) => {
  expect(themeOf(choice, isDark)).toBe(expected);
});
