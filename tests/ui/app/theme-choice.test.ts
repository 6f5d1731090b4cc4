import { expect, test } from 'vitest';
import { themeChoiceOf, themeOf } from '../../../src/ui/app/theme-choice.ts';

test.each([
  ['light', true, 'light'],
  ['dark', false, 'dark'],
  ['system', true, 'dark'],
  ['system', false, 'light'],
] as const)('chosen %s on a computer that is dark: %o comes to %s', (choice, isDark, expected) => {
  expect(themeOf(choice, isDark)).toBe(expected);
});

test.each([
  ['dark', 'dark'],
  ['light', 'light'],
  ['rubbish', 'system'],
  [null, 'system'],
] as const)('%o kept means %s', (kept, expected) => {
  expect(themeChoiceOf(kept)).toBe(expected);
});
