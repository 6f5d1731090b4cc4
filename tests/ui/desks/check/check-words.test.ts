import { expect, test } from 'vitest';
import { tallyWords } from '../../../../src/ui/desks/check/check-words.ts';

test('how far it has come', () => {
  expect(tallyWords({ pressed: 12, all: 180, wrong: 2, silent: 0 })).toBe('12 of 180 pressed, 2 wrong');
});
