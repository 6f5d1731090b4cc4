import { describe, expect, test } from 'vitest';
import type { Edit } from '../../../src/core/keymap/edit.ts';
import { edited, refusal } from './edits.ts';
import { A, B, boardKey, layer, small, toLayer } from './small.ts';

const at = (key: string, id = 'base') => ({ layer: id, key });
const start = small([
  layer('base', {
    k1: { tap: A, hold: toLayer('sym'), holdAfterMs: 180 },
    k2: { tap: B },
  }),
  layer('sym', { k1: { hold: B } }),
]);

function places(edit: Edit, id = 'base') {
  return edited(start, edit).keymap.layers.find((one) => one.id === id)?.places;
}

describe('bind', () => {
  test('sets one side and keeps the other with the timing', () => {
    expect(places({ edit: 'bind', place: at('k1'), side: 'tap', action: B })?.k1).toEqual({
      tap: B,
      hold: toLayer('sym'),
      holdAfterMs: 180,
    });
  });

  test('names the step and tells what it replaced', () => {
    const outcome = edited(start, {
      edit: 'bind',
      place: at('k2'),
      side: 'tap',
      action: { do: 'key', code: 'KeyJ' },
    });
    expect(outcome.title).toBe('Bind J on Base');
    expect(outcome.alongside).toEqual(['Replaced B at k2 on Base.']);
  });

  test('on an empty place replaces nothing', () => {
    const outcome = edited(start, { edit: 'bind', place: at('k3'), side: 'hold', action: toLayer('sym') });
    expect(outcome.keymap.layers[0]?.places.k3).toEqual({ hold: toLayer('sym') });
    expect(outcome.alongside).toEqual([]);
  });

  test('keeps a character in NFC', () => {
    const action = { do: 'char', char: 'e\u0301' } as const;
    expect(places({ edit: 'bind', place: at('k3'), side: 'tap', action })?.k3).toEqual({
      tap: { do: 'char', char: '\u00e9' },
    });
  });

  test('takes a key whose id is a name that every object has', () => {
    const odd = { ...start, board: { name: 'Odd', keys: ['k1', 'k2', 'constructor'].map(boardKey) } };
    const outcome = edited(odd, { edit: 'bind', place: at('constructor'), side: 'tap', action: A });
    expect(Object.entries(outcome.keymap.layers[0]?.places ?? {})).toContainEqual([
      'constructor',
      { tap: A },
    ]);
    expect(outcome.alongside).toEqual([]);
  });
});

describe('unbind', () => {
  test('takes one side off and keeps the other', () => {
    expect(places({ edit: 'unbind', place: at('k1'), side: 'hold' })?.k1).toEqual({
      tap: A,
      holdAfterMs: 180,
    });
  });

  test.each([
    ['the whole', { edit: 'unbind', place: at('k1') }],
    ['the only side', { edit: 'unbind', place: at('k2'), side: 'tap' }],
  ] as const)('with %s takes the binding away', (_, edit) => {
    expect(places(edit)).not.toHaveProperty(edit.place.key);
  });
});

describe('set-binding, move-binding, swap-bindings', () => {
  test('a whole binding replaces what is there', () => {
    const binding = { tap: B, holdBy: 'tap-inside' } as const;
    expect(places({ edit: 'set-binding', place: at('k1'), binding })?.k1).toEqual(binding);
  });

  test('a binding moves with its timing and tells what it replaced', () => {
    const outcome = edited(start, { edit: 'move-binding', from: at('k1'), to: at('k2') });
    expect(outcome.keymap.layers[0]?.places).toEqual({
      k2: { tap: A, hold: toLayer('sym'), holdAfterMs: 180 },
    });
    expect(outcome.alongside).toEqual(['Replaced B at k2 on Base.']);
  });

  test('bindings of two layers change places', () => {
    const { keymap } = edited(start, { edit: 'swap-bindings', one: at('k2'), other: at('k1', 'sym') });
    expect(keymap.layers[0]?.places.k2).toEqual({ hold: B });
    expect(keymap.layers[1]?.places).toEqual({ k1: { tap: B } });
  });

  test('a binding changes places with an empty one, either way round', () => {
    const there = edited(start, { edit: 'swap-bindings', one: at('k2'), other: at('k4') });
    const back = edited(there.keymap, { edit: 'swap-bindings', one: at('k2'), other: at('k4') });
    expect(there.keymap.layers[0]?.places).not.toHaveProperty('k2');
    expect(back.keymap).toEqual(start);
  });
});

describe('fill-layer', () => {
  test('sets taps, keeps holds and the keys that are not named', () => {
    const outcome = edited(start, { edit: 'fill-layer', layer: 'base', taps: { k1: B, k3: A } });
    expect(outcome.keymap.layers[0]?.places).toEqual({
      k1: { tap: B, hold: toLayer('sym'), holdAfterMs: 180 },
      k2: { tap: B },
      k3: { tap: A },
    });
    expect(outcome.alongside).toEqual(['Replaced one tap on Base.']);
  });
});

describe('what cannot be done is refused with the reason', () => {
  test.each<[string, Edit]>([
    [
      'There is no layer with the id "nav".',
      { edit: 'bind', place: at('k1', 'nav'), side: 'tap', action: A },
    ],
    ['The board has no key with the id "k9".', { edit: 'bind', place: at('k9'), side: 'tap', action: A }],
    [
      'layers[0].places.k1.tap.layer: found "nav", expected the id of a layer.',
      { edit: 'bind', place: at('k1'), side: 'tap', action: toLayer('nav') },
    ],
    [
      'layers[0].places.k1.tap.layer: found "base", expected a layer above the base, which is always on.',
      { edit: 'bind', place: at('k1'), side: 'tap', action: toLayer('base') },
    ],
    [
      'layers[0].places.k1.tap.char: found "ab", expected one character.',
      { edit: 'bind', place: at('k1'), side: 'tap', action: { do: 'char', char: 'ab' } },
    ],
    ['Nothing is bound at k3 on Base.', { edit: 'unbind', place: at('k3') }],
    ['There is no hold at k2 on Base.', { edit: 'unbind', place: at('k2'), side: 'hold' }],
    ['A binding has a tap, a hold or both.', { edit: 'set-binding', place: at('k1'), binding: {} }],
    ['Nothing is bound at k3 on Base.', { edit: 'move-binding', from: at('k3'), to: at('k1') }],
    ['It is already at k1 on Base.', { edit: 'move-binding', from: at('k1'), to: at('k1') }],
    ['Nothing is bound at k3 on Base.', { edit: 'swap-bindings', one: at('k3'), other: at('k4') }],
    ['The board has no key with the id "k9".', { edit: 'swap-bindings', one: at('k1'), other: at('k9') }],
    ['A binding cannot be swapped with itself.', { edit: 'swap-bindings', one: at('k1'), other: at('k1') }],
    ['The board has no key with the id "k9".', { edit: 'fill-layer', layer: 'base', taps: { k1: A, k9: A } }],
  ])('%s', (sentence, edit) => {
    expect(refusal(start, edit)).toBe(sentence);
  });
});
