import { describe, expect, it } from 'vitest';
import { keyWithoutBinding } from '../../../../src/core/findings/rules/key-without-binding.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

describe('key-without-binding', () => {
  it.each<[string, Sketch, readonly string[]]>([
    ['no layer binds it', { layers: { base: '· b c d e f g h i j' } }, ['unused | L1 |  | ']],
    [
      'none of several layers does',
      { layers: { base: 'a b c d @up f g · i ·', up: '1 · · · · · · · · ·' } },
      ['unused | R1 |  | ', 'unused | RT |  | '],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(keyWithoutBinding, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['all are bound', { layers: { base: 'a b c d e f g h i j' } }],
    [
      'one is bound above the base layer',
      { layers: { base: '· @up c d e f g h i j', up: 'x · · · · · · · · ·' } },
    ],
    ['one is blank on purpose', { layers: { base: '∅ b c d e f g h i j' } }],
    [
      'one is a chord’s',
      { layers: { base: '· b c d e f g h i j' }, chords: [chord('c', 'L1 L2', 45, 'Tab')] },
    ],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(keyWithoutBinding, sketch)).toEqual([]);
  });
});
