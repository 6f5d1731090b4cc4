import { expect, test } from 'vitest';
import { FRAGMENT_SIGNS } from '../../../src/core/link/fragment.ts';
import {
  copiedLinkWords,
  linkLengthWords,
  openedLinkWords,
} from '../../../src/ui/app/transfer/link-words.ts';

test.each([
  [3481, '3.4 kB'],
  [FRAGMENT_SIGNS.short, '8.0 kB'],
  [20_000, '19.5 kB, which some programs cut off: try it first'],
])('%i signs: %s', (signs, words) => {
  expect(linkLengthWords(signs)).toBe(words);
  expect(copiedLinkWords(signs)).toContain(words);
});

test('an opened link says that nothing of one’s own has changed', () => {
  expect(openedLinkWords('Gauge', 'added')).toContain('your own designs, which are as they were');
  expect(openedLinkWords('Gauge', 'kept before')).toContain('just as you keep it already');
});
