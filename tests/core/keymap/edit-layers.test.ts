import { describe, expect, test } from 'vitest';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { edited, refusal } from './edits.ts';
import { A, B, chord, layer, small, toLayer } from './small.ts';

describe('add-layer, rename-layer, set-on-while', () => {
  const start = small([layer('base'), layer('sym'), layer('nav')]);

  test('a new layer lies on top and may come with bindings and lead to itself', () => {
    const added = layer('num', { k1: { tap: { do: 'layer', layer: 'num', mode: 'lock' } } }, ['sym', 'nav']);
    const outcome = edited(start, { edit: 'add-layer', layer: added });
    expect(outcome.keymap.layers.at(-1)).toEqual(added);
    expect(outcome.title).toBe('Add layer NUM');
  });

  test('a name changes, the id stays', () => {
    const outcome = edited(start, { edit: 'rename-layer', layer: 'sym', name: 'Signs' });
    expect(outcome.keymap.layers[1]).toEqual({ ...layer('sym'), name: 'Signs' });
    expect(outcome.title).toBe('Rename layer SYM to Signs');
  });

  test('the same name again gives back the same keymap', () => {
    expect(edited(start, { edit: 'rename-layer', layer: 'sym', name: 'SYM' }).keymap).toBe(start);
  });

  test('a layer comes on with lower ones, and no longer', () => {
    const on = edited(start, { edit: 'set-on-while', layer: 'nav', onWhile: ['base', 'sym'] });
    expect(on.keymap.layers[2]?.onWhile).toEqual(['base', 'sym']);
    expect(on.title).toBe('Turn NAV on with Base and SYM');
    const off = edited(on.keymap, { edit: 'set-on-while', layer: 'nav', onWhile: null });
    expect(off.keymap).toEqual(start);
  });

  test.each<[string, Edit]>([
    ['There is a layer with the id "sym" already.', { edit: 'add-layer', layer: layer('sym') }],
    [
      'layers[3].places.k9: found "k9", expected the id of a key of the board.',
      { edit: 'add-layer', layer: layer('num', { k9: { tap: A } }) },
    ],
    ['There is no layer with the id "num".', { edit: 'rename-layer', layer: 'num', name: 'Num' }],
    [
      'layers[1].name: found "", expected 1 to 80 characters on one line.',
      { edit: 'rename-layer', layer: 'sym', name: '' },
    ],
    ['The base layer is always on.', { edit: 'set-on-while', layer: 'base', onWhile: ['sym', 'nav'] }],
    ['There is no layer with the id "num".', { edit: 'set-on-while', layer: 'nav', onWhile: ['num', 'sym'] }],
    [
      'layers[1].onWhile[1]: found "nav", expected a layer lower than this one.',
      { edit: 'set-on-while', layer: 'sym', onWhile: ['base', 'nav'] },
    ],
    [
      'layers[2].onWhile[1]: found "sym" again, expected each layer once.',
      { edit: 'set-on-while', layer: 'nav', onWhile: ['sym', 'sym'] },
    ],
    [
      'layers[2].onWhile: found a list of 1, expected 2 items at least.',
      { edit: 'set-on-while', layer: 'nav', onWhile: ['sym'] },
    ],
  ])('refused: %s', (sentence, edit) => {
    expect(refusal(start, edit)).toBe(sentence);
  });

  test('a layer beyond the limit is refused', () => {
    const full = small(Array.from({ length: 32 }, (_, index) => layer(index === 0 ? 'base' : `l${index}`)));
    expect(refusal(full, { edit: 'add-layer', layer: layer('more') })).toBe(
      'layers: found a list of 33, expected 32 items at most.',
    );
  });
});

describe('delete-layer takes along what led to the layer', () => {
  const start = small(
    [
      layer('base', {
        k1: { tap: A, hold: toLayer('sym') },
        k2: { hold: toLayer('sym') },
        k3: { tap: { do: 'layer', layer: 'nav', mode: 'latch' } },
      }),
      layer('sym', { k1: { tap: B } }),
      layer('nav', { k2: { tap: { do: 'layer', layer: 'sym', mode: 'lock' }, hold: B } }),
      layer('num', {}, ['sym', 'nav']),
      layer('fn', {}, ['base', 'sym', 'nav']),
    ],
    [
      chord('only', ['k1', 'k2'], { name: 'Only there', layers: ['sym'] }),
      chord('both', ['k1', 'k3'], { layers: ['base', 'sym'] }),
      chord('leads', ['k2', 'k3'], { action: toLayer('sym') }),
      chord('free', ['k3', 'k4']),
    ],
  );
  const outcome = edited(start, { edit: 'delete-layer', layer: 'sym' });

  test('layer actions everywhere, and bindings that are left with nothing', () => {
    expect(outcome.keymap.layers.map(({ id }) => id)).toEqual(['base', 'nav', 'num', 'fn']);
    expect(outcome.keymap.layers[0]?.places).toEqual({
      k1: { tap: A },
      k3: { tap: { do: 'layer', layer: 'nav', mode: 'latch' } },
    });
    expect(outcome.keymap.layers[1]?.places).toEqual({ k2: { hold: B } });
  });

  test('chords that were live on it only or led to it', () => {
    expect(outcome.keymap.chords).toEqual([
      chord('both', ['k1', 'k3'], { layers: ['base'] }),
      chord('free', ['k3', 'k4']),
    ]);
  });

  test('onWhile, which goes when fewer than two layers are left', () => {
    expect(outcome.keymap.layers[2]).not.toHaveProperty('onWhile');
    expect(outcome.keymap.layers[3]?.onWhile).toEqual(['base', 'nav']);
  });

  test('and says so', () => {
    expect(outcome.title).toBe('Delete layer SYM');
    expect(outcome.alongside).toEqual([
      'Took away what led to the layer: k1 on Base (hold), k2 on Base (hold), k2 on NAV (tap).',
      'Deleted the chord Only there, which was live on SYM only.',
      'Took SYM off the layers of the chord both.',
      'Deleted the chord leads, which led to SYM.',
      'NUM no longer comes on with other layers.',
      'FN no longer waits for it.',
    ]);
  });

  test('a layer that nothing leads to goes alone; a keymap without chords stays without', () => {
    const lone = edited(small([layer('base'), layer('sym')]), { edit: 'delete-layer', layer: 'sym' });
    expect(lone.alongside).toEqual([]);
    expect(lone.keymap).toEqual(small());
  });

  test.each([
    ['base', 'The base layer cannot be deleted.'],
    ['none', 'There is no layer with the id "none".'],
  ])('%s is refused', (id, sentence) => {
    expect(refusal(start, { edit: 'delete-layer', layer: id })).toBe(sentence);
  });
});
