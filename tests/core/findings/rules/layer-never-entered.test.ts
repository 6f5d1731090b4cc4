import { describe, expect, it } from 'vitest';
import { layerNeverEntered } from '../../../../src/core/findings/rules/layer-never-entered.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const empty = '· · · · · · · · · ·';
const base = 'a b c d e f g h i j';

describe('layer-never-entered', () => {
  it.each<[string, Sketch, readonly string[]]>([
    ['nothing turns it on', { layers: { base, up: empty } }, ['never-entered |  | up | ']],
    [
      'only a key on the layer itself does',
      { layers: { base, up: '@up · · · · · · · · ·' } },
      ['never-entered |  | up | '],
    ],
    [
      'two layers lead to each other only',
      { layers: { base, up: '@far · · · · · · · · ·', far: '@up · · · · · · · · ·' } },
      ['never-entered |  | up | ', 'never-entered |  | far | '],
    ],
    [
      'the key that leads to it has to be held for the layer it lies on',
      { layers: { base: '@up b c d e f g h i j', up: '@far · · · · · · · · ·', far: empty } },
      ['never-entered |  | far | '],
    ],
    [
      'it comes on with two layers that one key holds, one at a time',
      {
        layers: { base: 'a⇩@one b c d e f g h i j', one: empty, two: empty, both: empty },
        onWhile: { both: ['one', 'two'] },
      },
      ['never-entered |  | two | ', 'never-entered |  | both | '],
    ],
    [
      'it is the tap of a key that any press inside makes a hold',
      { layers: { base: '@up⇩Enter b c d e f g h i j', up: empty }, timing: { holdBy: 'press-inside' } },
      ['never-entered |  | up | '],
    ],
    [
      'its chord is live on itself only',
      { layers: { base, up: empty }, chords: [chord('c', 'L1 L2', 45, '@up', ['up'])] },
      ['never-entered |  | up | c'],
    ],
    [
      'its chord is always taken by an earlier one',
      {
        layers: { base, up: empty },
        chords: [chord('a', 'L1 L2', 45, 'Tab'), chord('b', 'L2 L1', 45, '@up')],
      },
      ['never-entered |  | up | '],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(layerNeverEntered, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['a hold leads to it', { layers: { base: 'a⇩@up b c d e f g h i j', up: empty } }],
    [
      'it is the tap of a hold/tap key, on for the keys that come meanwhile',
      { layers: { base: '@up⇩Enter b c d e f g h i j', up: empty } },
    ],
    [
      'a hold/tap key leads to it that is a tap at once when tapped again',
      {
        layers: { base: '@up⇩Enter b c d e f g h i j', up: empty },
        timing: { holdBy: 'press-inside', againWithinMs: 150 },
      },
    ],
    ['a lock leads to it', { layers: { base: '@up:lock b c d e f g h i j', up: empty } }],
    ['a latch leads to it', { layers: { base: '@up:latch b c d e f g h i j', up: empty } }],
    [
      'a chord leads to it',
      { layers: { base, up: empty }, chords: [chord('c', 'L1 L2', 45, '@up', ['base'])] },
    ],
    [
      'a key of another layer leads to it',
      { layers: { base: '@up b c d e f g h i j', up: '· @far · · · · · · · ·', far: empty } },
    ],
    [
      'the key that leads to it is free when a chord holds its layer',
      {
        layers: { base: '@up b c d e f g h i j', up: '@far · · · · · · · · ·', far: empty },
        chords: [chord('c', 'L2 L3', 45, '@up', ['base'])],
      },
    ],
    [
      'it comes on with two layers that two keys hold',
      {
        layers: { base: '@one @two c d e f g h i j', one: empty, two: empty, both: empty },
        onWhile: { both: ['one', 'two'] },
      },
    ],
    [
      'one of its two layers is entered from a third, all held at once',
      {
        layers: {
          base: '@one @way c d e f g h i j',
          one: empty,
          way: '· · @two · · · · · · ·',
          two: empty,
          both: empty,
        },
        onWhile: { both: ['one', 'two'] },
      },
    ],
    [
      'its lock lies on a layer that another lock leads through',
      {
        layers: {
          base: '@way:lock b c d e f g h i j',
          way: '· @up:lock · · · · · · · ·',
          up: empty,
        },
      },
    ],
    [
      'its chord has the keys of an earlier one with a shorter window',
      {
        layers: { base, up: empty },
        chords: [chord('a', 'L1 L2', 30, 'Tab'), chord('b', 'L2 L1', 45, '@up')],
      },
    ],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(layerNeverEntered, sketch)).toEqual([]);
  });

  it('counts what lies on the layer', () => {
    const [found] = says(layerNeverEntered, {
      layers: { base, up: 'x y · · · · · · · ·' },
      chords: [chord('c', 'L1 L2', 45, 'Tab', ['up'])],
    });
    expect(found?.data).toEqual({ layer: 'the up layer', keys: 2, chords: 1 });
  });

  it('offers a free key of the base layer, thumb keys first, that the layer does not bind', () => {
    const [found] = says(layerNeverEntered, {
      layers: { base: 'a b · d e f g h · ·', up: '· · · · · · · · x ·' },
    });
    expect(found?.mends.map(({ edits }) => edits)).toEqual([
      [
        {
          edit: 'bind',
          place: { layer: 'base', key: 'RT' },
          side: 'tap',
          action: { do: 'layer', layer: 'up', mode: 'while-held' },
        },
      ],
    ]);
  });

  it('offers the hold of a thumb key that types, but no letter, where no key is free', () => {
    const [found] = says(layerNeverEntered, { layers: { base: 'a b c d e f g h i Space', up: empty } });
    expect(found?.mends[0]?.edits[0]).toMatchObject({ place: { layer: 'base', key: 'RT' }, side: 'hold' });
    expect(says(layerNeverEntered, { layers: { base, up: empty } })[0]?.mends).toEqual([]);
  });

  it('offers nothing where entering the layer would let it open others', () => {
    const sketch = { layers: { base, up: '@far:lock · · · · · · · · ·', far: empty } };
    const first = says(layerNeverEntered, sketch)[0];
    expect(first?.subjects.layers).toEqual(['up']);
    expect(first?.mends).toEqual([]);
  });
});
