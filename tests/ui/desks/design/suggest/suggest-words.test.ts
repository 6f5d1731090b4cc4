import { expect, test } from 'vitest';
import type { ChordSuggestion } from '../../../../../src/core/typist/suggest-chords.ts';
import {
  candidateRows,
  lookedAt,
  SIZES,
  sizesOf,
} from '../../../../../src/ui/desks/design/suggest/suggest-words.ts';
import { sample } from '../../../../store/sample.ts';

const [one, other] = sample.board.keys.map(({ id }) => id);
const suggestion: ChordSuggestion = {
  keys: [one ?? '', other ?? ''],
  misfiresPer1000Words: 0.234,
  missesPer1000Uses: 27.3,
  comfort: ['home-row', 'little-finger'],
  conflicts: [{ what: 'hold-tap', key: one ?? '' }],
  like: [],
  near: [],
  cost: 1,
};
const rowOf = (more: Partial<ChordSuggestion>) =>
  candidateRows(sample, {
    suggestions: [{ ...suggestion, ...more }],
    considered: 1,
    stoppedBy: 'all',
  })[0];

test.each([
  [0, 'hardly ever set off by typing'],
  [0.004, 'hardly ever set off by typing'],
  [0.234, 'about 0.23 misfires in 1,000 words'],
  [3.21, 'about 3.2 misfires in 1,000 words'],
  [41.7, 'about 42 misfires in 1,000 words'],
])('%d misfires in 1,000 words: %s', (misfiresPer1000Words, words) => {
  expect(rowOf({ misfiresPer1000Words })?.misfires).toBe(words);
});

test('what speaks for it stands apart from what speaks against it', () => {
  const row = rowOf({});
  expect(row?.speaksFor).toBe('home row');
  expect(row?.speaksAgainst).toMatch(/^little finger, .* has a hold$/);
});

test('nothing found is said as such', () => {
  expect(lookedAt({ suggestions: [], considered: 1, stoppedBy: 'all' }, 'Tab')).toMatch(/^None of 1 /);
});

test('sizes', () => {
  expect(SIZES.map(({ value }) => sizesOf(value))).toEqual([
    [2, 4],
    [2, 2],
    [3, 3],
    [4, 4],
  ]);
});
