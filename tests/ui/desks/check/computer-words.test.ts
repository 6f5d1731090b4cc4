import { expect, test } from 'vitest';
import { tallyWords } from '../../../../src/ui/desks/check/check-words.ts';
import { leftWords, probeWords } from '../../../../src/ui/desks/check/computer-words.ts';

test.each([
  [{ code: 'KeyY', shift: false, level3: false }, 'the key that is Y on a US keyboard'],
  [
    { code: 'KeyE', shift: false, level3: true },
    'AltGr (Option on a Mac) + the key that is E on a US keyboard',
  ],
  [{ code: 'Semicolon', shift: true, level3: false }, 'Shift + Semicolon'],
] as const)('%j', (probe, words) => {
  expect(probeWords(probe)).toBe(words);
});

test.each([
  [[], 'It is on none of the layouts that come with this page.'],
  [['German'], 'It is on German, as the design has it.'],
  [['French'], 'It is on French; the design is for German.'],
  [['German', 'Swiss'], /cannot tell apart: German, Swiss. The design’s is among them/],
  [['French', 'Belgian'], /French, Belgian; the design is for German/],
])('left over %j', (titles, words) => {
  expect(leftWords(titles, 'German')).toEqual(
    typeof words === 'string' ? words : expect.stringMatching(words),
  );
});

test('how far it has come', () => {
  expect(tallyWords({ pressed: 12, all: 180, wrong: 2, silent: 0 })).toBe('12 of 180 pressed, 2 wrong');
});
