import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { edited, refusal } from './edits.ts';
import { A, B, chord, layer, small, toLayer } from './small.ts';

const start = small(
  [
    layer('base', { k1: { tap: A, hold: toLayer('sym') } }),
    layer('sym', { k1: { tap: B }, k2: { tap: { do: 'layer', layer: 'sym', mode: 'lock' } } }),
    layer('nav', { k2: { hold: toLayer('sym') } }),
    layer('num', { k3: { tap: A } }, ['sym', 'nav']),
    layer('fn'),
  ],
  [chord('both', ['k1', 'k2'], { layers: ['base', 'sym'] }), chord('every', ['k3', 'k4'])],
);
const order = (keymap: Keymap) => keymap.layers.map(({ id }) => id).join(' ');

describe('move-layer', () => {
  test.each([
    ['fn', 1, 'base fn sym nav num', 'Move layer FN above Base'],
    ['nav', 1, 'base nav sym num fn', 'Move layer NAV above Base'],
    ['num', 4, 'base sym nav fn num', 'Move layer NUM above FN'],
  ])('%s to %i: %s', (id, to, wanted, title) => {
    const outcome = edited(start, { edit: 'move-layer', layer: id, to });
    expect(order(outcome.keymap)).toBe(wanted);
    expect(outcome.title).toBe(title);
    expect(outcome.keymap.chords).toBe(start.chords);
  });

  test('to where it is: the same keymap', () => {
    expect(edited(start, { edit: 'move-layer', layer: 'nav', to: 2 }).keymap).toBe(start);
  });

  test.each([
    ['base', 2, 'The base layer stays at the foot of the stack.'],
    ['nav', 0, 'Nothing lies below the base layer.'],
    ['nav', 5, 'The stack has no place 5.'],
    ['nav', 1.5, 'The stack has no place 1.5.'],
    ['nav', 4, 'NUM comes on with NAV, so it stays above it.'],
    ['num', 1, 'NUM comes on with SYM, so it stays above it.'],
    ['none', 1, 'There is no layer with the id "none".'],
  ])('%s to %d is refused', (id, to, sentence) => {
    expect(refusal(start, { edit: 'move-layer', layer: id, to })).toBe(sentence);
  });

  test('moved there and back again, every design is as it was', () => {
    void fc.assert(
      fc.property(keymapArbitrary({ maxLayers: 5 }), fc.nat(4), fc.nat(4), (keymap, from, to) => {
        const id = keymap.layers[from]?.id;
        fc.pre(id !== undefined);
        const there = applyEdit(keymap, { edit: 'move-layer', layer: id, to });
        if (!there.ok) return;
        const back = edited(there.value.keymap, { edit: 'move-layer', layer: id, to: from });
        expect(back.keymap).toEqual(keymap);
      }),
      { numRuns: 200 },
    );
  });
});

describe('duplicate-layer', () => {
  const copied = edited(start, { edit: 'duplicate-layer', layer: 'sym', id: 'sym2', name: 'Signs' });

  test('the copy lies above the layer and leads to itself where that did', () => {
    expect(order(copied.keymap)).toBe('base sym sym2 nav num fn');
    expect(copied.keymap.layers[2]).toEqual({
      id: 'sym2',
      name: 'Signs',
      places: { k1: { tap: B }, k2: { tap: { do: 'layer', layer: 'sym2', mode: 'lock' } } },
    });
    expect(copied.keymap.layers[1]).toEqual(start.layers[1]);
  });

  test('chords that name the layer name the copy too', () => {
    expect(copied.keymap.chords?.map(({ layers }) => layers)).toEqual([['base', 'sym', 'sym2'], undefined]);
  });

  test('says so', () => {
    expect(copied.title).toBe('Duplicate layer SYM');
    expect(copied.alongside).toEqual([
      'Live on the copy too: both.',
      'What led from the layer to itself leads from the copy to the copy: k2 on SYM.',
    ]);
  });

  test('the copy of a layer that comes on with others does not: it would hide the layer', () => {
    const { keymap } = edited(start, { edit: 'duplicate-layer', layer: 'num', id: 'num2', name: 'Num 2' });
    expect(keymap.layers[4]).toEqual({ id: 'num2', name: 'Num 2', places: { k3: { tap: A } } });
  });

  test.each([
    ['none', 'x', 'There is no layer with the id "none".'],
    ['sym', 'nav', 'There is a layer with the id "nav" already.'],
  ])('%s as %s is refused', (id, copy, sentence) => {
    expect(refusal(start, { edit: 'duplicate-layer', layer: id, id: copy, name: 'Copy' })).toBe(sentence);
  });

  test('deleting the copy leads back to the very same design', () => {
    void fc.assert(
      fc.property(keymapArbitrary({ maxLayers: 4 }), fc.nat(3), (keymap, at) => {
        const id = keymap.layers[at]?.id;
        fc.pre(id !== undefined);
        const there = edited(keymap, { edit: 'duplicate-layer', layer: id, id: 'copy', name: 'Copy' });
        expect(edited(there.keymap, { edit: 'delete-layer', layer: 'copy' }).keymap).toEqual(keymap);
      }),
      { numRuns: 200 },
    );
  });
});
