import { expect, test } from 'vitest';
import { bestMatches } from '../../../src/ui/widgets/best-matches.ts';

const names = ['a', 'A', 'Tab', 'Arrow left', 'Left Alt', 'Page up', 'Volume up', 'Up'];
const things = names.map((label) => ({ label }));
const found = (query: string, most = 9) => bestMatches(things, query, most).map(({ label }) => label);

test.each([
  ['A', ['A', 'a', 'Arrow left', 'Left Alt', 'Tab', 'Page up']],
  ['a', ['a', 'A', 'Arrow left', 'Left Alt', 'Tab', 'Page up']],
  ['up', ['Up', 'Page up', 'Volume up']],
  ['left', ['Left Alt', 'Arrow left']],
  ['zz', []],
])('%o finds the best first', (query, expected) => {
  expect(found(query)).toEqual(expected);
});

test('an empty query finds everything in its order, and no more than asked for', () => {
  expect(found('', 3)).toEqual(['a', 'A', 'Tab']);
});

test('other words than the name find it too, after every name that has them', () => {
  const more = [
    { label: 'Computers', also: 'host layout' },
    { label: 'Layout of the page' },
    { label: 'Rest' },
  ];
  expect(bestMatches(more, 'layout', 9).map(({ label }) => label)).toEqual([
    'Layout of the page',
    'Computers',
  ]);
});
