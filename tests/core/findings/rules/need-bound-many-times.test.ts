import { describe, expect, it } from 'vitest';
import { needBoundManyTimes } from '../../../../src/core/findings/rules/need-bound-many-times.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

describe('need-bound-many-times', () => {
  it.each<[string, Sketch, readonly string[]]>([
    [
      'three keys give it',
      { layers: { base: 'Tab Tab Tab d e f g h i j' } },
      ['many-times | L1 L2 L3 | base | '],
    ],
    [
      'a key, a hold and a chord give it',
      { layers: { base: 'Tab b⇩Tab c d e f g h i j' }, chords: [chord('c', 'L3 L4', 45, 'Tab')] },
      ['many-times | L1 L2 | base | c'],
    ],
    [
      'keys and characters are the same stroke',
      { layers: { base: 'KeyQ q q d e f g h i j' } },
      ['many-times | L1 L2 L3 | base | '],
    ],
    [
      'layers in reach repeat it',
      { layers: { base: 'Tab @up c d e f g h i j', up: 'Tab · Tab · · · · · · ·' } },
      ['many-times | L1 L3 | base up | '],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(needBoundManyTimes, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['two keys give it', { layers: { base: 'Tab Tab c d e f g h i j' } }],
    ['it is a modifier', { layers: { base: 'ShiftLeft ShiftLeft ShiftLeft d e f g h i j' } }],
    ['modifiers differ', { layers: { base: 'KeyQ Q ControlLeft+KeyQ d e f g h i j' } }],
    [
      'a layer out of reach repeats it',
      { layers: { base: 'Tab Tab c d e f g h i j', up: 'Tab · · · · · · · · ·' } },
    ],
    ['places are blank', { layers: { base: '∅ ∅ ∅ d e f g h i j' } }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(needBoundManyTimes, sketch)).toEqual([]);
  });

  it('is a note with the number of bindings', () => {
    const [found] = says(needBoundManyTimes, { layers: { base: 'Tab Tab Tab Tab e f g h i j' } });
    expect(found).toMatchObject({ severity: 'note', data: { need: 'key:Tab', times: 4 } });
  });
});
