import { describe, expect, test } from 'vitest';
import type { Edit } from '../../../../../src/core/keymap/edit.ts';
import {
  edgeOfDrop,
  movedWords,
  placeOfDrop,
  sheetItems,
} from '../../../../../src/ui/desks/design/layers/layer-order.ts';
import { layer, small } from '../../../../core/keymap/small.ts';

const keymap = small([layer('base'), layer('sym'), layer('nav'), layer('num')]);

test.each([
  ['sym', 'num', 3, 'above'],
  ['num', 'sym', 1, 'below'],
  ['num', 'base', 1, 'above'],
  ['sym', 'base', 1, null],
  ['nav', 'nav', 2, null],
  ['base', 'nav', 2, null],
])('%s over %s: place %i, line %s', (dragged, over, place, edge) => {
  expect(placeOfDrop(keymap, over)).toBe(place);
  expect(edgeOfDrop(keymap, dragged, over)).toBe(edge);
});

test('what is said of a move', () => {
  expect(movedWords(keymap, 'nav')).toBe('NAV is number 2 of 3 now, above SYM.');
});

describe('the menu of a sheet', () => {
  const itemsOf = (id: string) => {
    const edits: Edit[] = [];
    const bench = { edit: (edit: Edit) => edits.push(edit), showLayer: () => {} };
    const items = sheetItems(keymap, id, bench, () => {}).filter((item) => item !== 'line');
    return {
      edits,
      items,
      choose: (label: string) => items.find((item) => item.label === label)?.onSelect(),
    };
  };

  test.each([
    ['base', ['Name and ways in…', 'Duplicate']],
    ['sym', ['Name and ways in…', 'Move up', 'Duplicate', 'Delete']],
    ['nav', ['Name and ways in…', 'Move up', 'Move down', 'Duplicate', 'Delete']],
    ['num', ['Name and ways in…', 'Move down', 'Duplicate', 'Delete']],
  ])('%s offers what can be done', (id, labels) => {
    const { items } = itemsOf(id);
    expect(items.filter(({ disabled }) => disabled !== true).map(({ label }) => label)).toEqual(labels);
  });

  test('moves by one, and duplicates under a name that is free', () => {
    const { edits, choose } = itemsOf('nav');
    for (const label of ['Move up', 'Move down', 'Duplicate']) choose(label);
    expect(edits).toEqual([
      { edit: 'move-layer', layer: 'nav', to: 3 },
      { edit: 'move-layer', layer: 'nav', to: 1 },
      { edit: 'duplicate-layer', layer: 'nav', id: 'layer1', name: 'NAV, copy' },
    ]);
  });
});
