import { test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { brokenReferences } from '../../../src/core/keymap/references.ts';
import { grownKeymapArbitrary } from '../arbitraries/grown-keymap.ts';
import { A, chord, layer, small, toLayer } from './small.ts';

describe('references to what does not exist', () => {
  test('are found wherever a key or a layer is named, with what they stand in', () => {
    const broken = small(
      [
        layer('base', { gone: { tap: A }, k1: { tap: A, hold: toLayer('no-1') } }),
        layer('sym', {}, ['base', 'no-2']),
      ],
      [
        chord('c1', ['k1', 'lost'], { layers: ['base', 'no-3'] }),
        chord('c2', ['k1', 'k2'], { action: toLayer('no-4') }),
      ],
    );
    expect(brokenReferences(broken)).toEqual([
      {
        path: ['layers', 0, 'places', 'gone'],
        names: 'key',
        id: 'gone',
        at: { where: 'place', place: { layer: 'base', key: 'gone' } },
      },
      {
        path: ['layers', 0, 'places', 'k1', 'hold', 'layer'],
        names: 'layer',
        id: 'no-1',
        at: { where: 'action', place: { layer: 'base', key: 'k1' }, side: 'hold' },
      },
      {
        path: ['chords', 1, 'action', 'layer'],
        names: 'layer',
        id: 'no-4',
        at: { where: 'chord-action', chord: 'c2' },
      },
      {
        path: ['layers', 1, 'onWhile', 1],
        names: 'layer',
        id: 'no-2',
        at: { where: 'on-while', layer: 'sym' },
      },
      { path: ['chords', 0, 'keys', 1], names: 'key', id: 'lost', at: { where: 'chord-key', chord: 'c1' } },
      {
        path: ['chords', 0, 'layers', 1],
        names: 'layer',
        id: 'no-3',
        at: { where: 'chord-layer', chord: 'c1' },
      },
    ]);
  });

  test('a key that is called like a part of every object is no key of the board', () => {
    expect(brokenReferences(small([layer('base')], [chord('c', ['k1', 'constructor'])]))).toHaveLength(1);
  });

  propertyTest.prop([grownKeymapArbitrary()], { numRuns: 200 })('a valid keymap has none', (keymap) => {
    expect(brokenReferences(keymap)).toEqual([]);
  });
});
