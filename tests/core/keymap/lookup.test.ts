import { describe, expect, test } from 'vitest';
import { freshId } from '../../../src/core/keymap/fresh-id.ts';
import { bindingAt, bindingThrough, chordById, hasKey, layerById } from '../../../src/core/keymap/lookup.ts';
import { newKeymap } from '../../../src/core/keymap/new-keymap.ts';
import { checkKeymap } from '../../../src/core/keymap/read.ts';
import { A, B, chord, layer, small } from './small.ts';

const base = layer('base', { k1: { tap: A }, k2: { tap: A } });
const sym = layer('sym', { k1: { tap: B } });
const nav = layer('nav', { k1: { tap: { do: 'nothing' } } });
const keymap = small([base, sym, nav], [chord('c1', ['k1', 'k2'])]);

describe('looking things up', () => {
  test('layers, chords, keys and bindings by what names them', () => {
    expect(layerById(keymap, 'sym')).toBe(sym);
    expect(chordById(keymap, 'c1')).toBe(keymap.chords?.[0]);
    expect(hasKey(keymap, 'k5')).toBe(true);
    expect(bindingAt(keymap, { layer: 'sym', key: 'k1' })).toEqual({ tap: B });
  });

  test('what is not there is undefined, even if objects have such a part', () => {
    expect(layerById(keymap, 'none')).toBeUndefined();
    expect(chordById(small(), 'c1')).toBeUndefined();
    expect(hasKey(keymap, 'k6')).toBe(false);
    expect(bindingAt(keymap, { layer: 'sym', key: 'k2' })).toBeUndefined();
    expect(bindingAt(keymap, { layer: 'none', key: 'k1' })).toBeUndefined();
    expect(bindingAt(keymap, { layer: 'base', key: 'constructor' })).toBeUndefined();
  });

  test.each([
    ['k1', [], 'base'],
    ['k1', ['sym'], 'sym'],
    ['k1', ['nav', 'sym'], 'nav'],
    ['k2', ['nav', 'sym'], 'base'],
    ['k3', ['nav', 'sym'], undefined],
  ])('S12: %s with %j on is bound on %s', (key, on, where) => {
    expect(bindingThrough(keymap, new Set(on), key)?.layer.id).toBe(where);
  });
});

describe('making things', () => {
  test.each([
    [[], 'c1'],
    [['c1', 'c3'], 'c2'],
    [['c1', 'c2'], 'c3'],
    [['other'], 'c1'],
  ])('with %j taken, the next id is %s', (taken, id) => {
    expect(freshId('c', taken)).toBe(id);
  });

  test('a new design has an empty base layer and is valid', () => {
    const { board, hosts } = small();
    const host = hosts[0] ?? { system: 'linux', layout: 'us', variant: '' };
    const fresh = newKeymap({ name: 'New', board, host });
    expect(checkKeymap(fresh)).toEqual({ ok: true, value: fresh });
    expect(fresh.layers).toEqual([{ id: 'base', name: 'Base', places: {} }]);
    const needs = { lists: ['ascii'], own: [], waived: [] };
    expect(newKeymap({ name: 'New', board, host, needs }).needs).toEqual(needs);
  });
});
