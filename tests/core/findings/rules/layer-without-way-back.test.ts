import { describe, expect, it } from 'vitest';
import { layerWithoutWayBack } from '../../../../src/core/findings/rules/layer-without-way-back.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const empty = '· · · · · · · · · ·';
const full = '1 2 3 4 5 6 7 8 9 0';

describe('layer-without-way-back', () => {
  it.each<[string, Sketch, readonly string[]]>([
    [
      'the layer covers its own lock key',
      { layers: { base: '@up:lock b c d e f g h i j', up: 'x · · · · · · · · ·' } },
      ['lock | L1 | up | '],
    ],
    [
      'the lock key lies on a layer whose key the locked layer covers',
      {
        layers: {
          base: '@way b c d e f g h i j',
          way: '· @up:lock · · · · · · · ·',
          up: '∅ · · · · · · · · ·',
        },
      },
      ['lock | L2 | up | '],
    ],
    [
      'its chord is not live there',
      { layers: { base: full, up: empty }, chords: [chord('c', 'L1 L2', 45, '@up:lock', ['base'])] },
      ['lock | L1 L2 | up | '],
    ],
    [
      'a latched layer is blank all over',
      { layers: { base: '@up:latch b c d e f g h i j', up: '∅ ∅ ∅ ∅ ∅ ∅ ∅ ∅ ∅ ∅' } },
      ['latch | L1 | up | '],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(layerWithoutWayBack, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['its lock key falls through', { layers: { base: '@up:lock b c d e f g h i j', up: empty } }],
    [
      'it binds a lock key of its own',
      { layers: { base: '@up:lock b c d e f g h i j', up: 'x @up:lock · · · · · · · ·' } },
    ],
    [
      'the way back leads over another layer',
      {
        layers: {
          base: '@way b c d e f g h i j',
          way: '· @up:lock · · · · · · · ·',
          up: '· x · · · · · · @back ·',
          back: '· @up:lock · · · · · · · ·',
        },
      },
    ],
    ['a latched layer types', { layers: { base: '@up:latch b c d e f g h i j', up: full } }],
    [
      'a blank latched layer leaves its latch key open',
      { layers: { base: '@up:latch b c d e f g h i j', up: '· ∅ ∅ ∅ ∅ ∅ ∅ ∅ ∅ ∅' } },
    ],
    ['it is held', { layers: { base: '@up b c d e f g h i j', up: 'x · · · · · · · · ·' } }],
    [
      'its chord is live there too',
      { layers: { base: full, up: empty }, chords: [chord('c', 'L1 L2', 45, '@up:lock')] },
    ],
    [
      'nobody can lock it',
      { layers: { base: full, way: '@up:lock · · · · · · · · ·', up: 'x · · · · · · · · ·' } },
    ],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(layerWithoutWayBack, sketch)).toEqual([]);
  });

  it('offers a lock key at an empty place of the layer, home keys first', () => {
    const [found] = says(layerWithoutWayBack, {
      layers: { base: '@up:lock b c d e f g h i j', up: 'x y · · · · · · · ·' },
    });
    expect(found?.data).toEqual({ layer: 'the up layer', mode: 'lock' });
    expect(found?.mends.map(({ edits }) => edits)).toEqual([
      [
        {
          edit: 'bind',
          place: { layer: 'up', key: 'L3' },
          side: 'tap',
          action: { do: 'layer', layer: 'up', mode: 'lock' },
        },
      ],
    ]);
  });

  it('offers nothing where the layer is full', () => {
    const sketch = { layers: { base: '@up:lock b c d e f g h i j', up: full } };
    expect(says(layerWithoutWayBack, sketch)[0]?.mends).toEqual([]);
  });
});
