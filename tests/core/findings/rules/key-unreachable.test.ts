import { describe, expect, it } from 'vitest';
import { keyUnreachable } from '../../../../src/core/findings/rules/key-unreachable.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const empty = '· · · · · · · · · ·';

describe('key-unreachable', () => {
  it.each<[string, Sketch, readonly string[]]>([
    [
      'a key is bound where it holds the layer',
      { layers: { base: '@up b c d e f g h i j', up: 'x · · · · · · · · ·' } },
      ['holds-its-layer | L1 | up | '],
    ],
    [
      'all keys of the only chord that holds the layer are bound there',
      {
        layers: { base: 'a b c d e f g h i j', up: 'x y z · · · · · · ·' },
        chords: [chord('c', 'L1 L2', 45, '@up', ['base'])],
      },
      ['holds-its-layer | L1 | up | ', 'holds-its-layer | L2 | up | '],
    ],
    [
      'nobody can enter the layer',
      { layers: { base: 'a b c d e f g h i j', up: '· x · y · · · · · ·' } },
      ['on-layer-never-entered | L2 L4 | up | '],
    ],
    [
      'a layer that comes on with it always covers the key',
      {
        layers: { base: '@up b c d e f g h i j', up: '· x y · · · · · · ·', over: '· z · · · · · · · ·' },
        onWhile: { over: ['base', 'up'] },
      },
      ['always-covered | L2 | up over | '],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(keyUnreachable, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    [
      'another key holds the layer too',
      { layers: { base: '@up @up c d e f g h i j', up: 'x y · · · · · · · ·' } },
    ],
    ['the layer is locked', { layers: { base: '@up:lock b c d e f g h i j', up: 'x · · · · · · · · ·' } }],
    ['the layer is latched', { layers: { base: '@up:latch b c d e f g h i j', up: 'x · · · · · · · · ·' } }],
    [
      'the key turns the layer off where it locked it',
      { layers: { base: '@up:lock b c d e f g h i j', up: '@up:lock · · · · · · · · ·' } },
    ],
    ['what lies there is blank', { layers: { base: '@up b c d e f g h i j', up: '∅ · · · · · · · · ·' } }],
    [
      'the key is part of chords: alone it is passed on',
      {
        layers: { base: 'a b c d e f g h i j' },
        chords: [chord('c', 'L1 L2', 45, 'Tab'), chord('d', 'L1 L3', 0, 'Enter')],
      },
    ],
    [
      'a third layer, entered from the second, covers the key only while it is held',
      {
        layers: { base: '@up b c d e f g h i j', up: '· x @far · · · · · · ·', far: '· y · · · · · · · ·' },
      },
    ],
    [
      'its layer is latched from one that is latched too, whose key goes up last',
      {
        layers: {
          base: 'a b c d e f g h i @one:latch',
          one: '· · · · · · · · · ·',
          two: 'x · · · · · · · · z',
          three: 'y @two:latch · · · · · · · ·',
        },
        onWhile: { three: ['base', 'one'] },
      },
    ],
    ['the layer is empty', { layers: { base: 'a b c d e f g h i j', up: empty } }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(keyUnreachable, sketch)).toEqual([]);
  });

  it('offers to move the binding to an empty place of the layer, or to take it off', () => {
    const [found] = says(keyUnreachable, {
      layers: { base: '@up b c d e f g h i j', up: 'x · · · · · · · · ·' },
    });
    const from = { layer: 'up', key: 'L1' };
    expect(found?.mends.map(({ edits }) => edits)).toEqual([
      [{ edit: 'move-binding', from, to: { layer: 'up', key: 'L2' } }],
      [{ edit: 'unbind', place: from }],
    ]);
    expect(found?.data).toEqual({ key: 'left little home', layer: 'the up layer' });
  });

  it('does not cover a key of the base layer that holds something', () => {
    const [held] = says(keyUnreachable, {
      layers: {
        base: '@up ShiftLeft @far d⇩ControlLeft ShiftRight f g h i j',
        up: 'x · · · · · · · · ·',
        far: empty,
      },
    });
    expect(held?.mends[0]?.edits[0]).toMatchObject({ to: { key: 'LT' } });
  });
});
