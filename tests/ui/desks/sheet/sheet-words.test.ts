import { expect, test } from 'vitest';
import { usHost } from '../../../../src/core/host/us.ts';
import { hiddenAfter, rungOptions } from '../../../../src/ui/board/rung-options.ts';
import { pageFileName, sheetSentence } from '../../../../src/ui/desks/sheet/choices/sheet-words.ts';
import { worksheetTables } from '../../../../src/ui/desks/sheet/worksheet/worksheet-tables.ts';
import { sample } from '../../../store/sample.ts';

test.each([
  [1, { paper: 'a4', turn: 'landscape', ink: 'colour' }, /^One page of A4, landscape\. .*7 pt.*5\.6 pt/],
  [3, { paper: 'letter', turn: 'portrait', ink: 'black' }, /^3 pages of US Letter, portrait\./],
] as const)('%d pages are told in a sentence', (pages, options, sentence) => {
  expect(sheetSentence(pages, options)).toMatch(sentence);
});

test('the first page has the name of the design, further ones a number', () => {
  expect([0, 1].map((at) => pageFileName('Seed drawer', at, 'svg'))).toEqual([
    'seed-drawer.sheet.svg',
    'seed-drawer.sheet-2.svg',
  ]);
});

test('hiding rungs leaves alone those that only a taller design has', () => {
  const options = rungOptions([
    { id: 'base', name: 'Base' },
    { id: 'one', name: 'One' },
    { id: 'two', name: 'Two' },
  ]);
  expect(options.map(({ label }) => label)).toEqual(['1 One', '2 Two']);
  expect(hiddenAfter(options, ['two'], [2, 7])).toEqual([1, 7]);
});

test('the worksheet has a table a layer with a row a key', () => {
  const tables = worksheetTables({ ...sample, chords: [] }, usHost);
  expect(tables.map(({ rows }) => rows.length)).toEqual(sample.layers.map(() => sample.board.keys.length));
});
