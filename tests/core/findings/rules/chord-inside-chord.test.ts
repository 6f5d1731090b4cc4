import { describe, expect, it } from 'vitest';
import { chordInsideChord } from '../../../../src/core/findings/rules/chord-inside-chord.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const layers = { base: '@up b c d e f g h i j', up: '· · · · · · · · · ·' };
const small = (on?: readonly string[]) => chord('small', 'L3 L4', 45, 'Tab', on);
const large = (on?: readonly string[]) => chord('large', 'L2 L3 L4', 65, 'Escape', on);

describe('chord-inside-chord', () => {
  it.each<[string, Sketch, readonly string[]]>([
    [
      'all its keys are in a larger one',
      { layers, chords: [small(), large()] },
      ['waits | L3 L4 | base up | small large'],
    ],
    [
      'the larger one comes first',
      { layers, chords: [large(), small(['up'])] },
      ['waits | L3 L4 | up | small large'],
    ],
    [
      'two larger ones hold it',
      { layers, chords: [small(), large(), chord('huge', 'L1 L2 L3 L4', 80, 'Enter')] },
      [
        'waits | L3 L4 | base up | small large',
        'waits | L3 L4 | base up | small huge',
        'waits | L2 L3 L4 | base up | large huge',
      ],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(chordInsideChord, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['they share no layer', { layers, chords: [small(['base']), large(['up'])] }],
    ['they share one key only', { layers, chords: [small(), chord('other', 'L1 L2 L3', 65, 'Escape')] }],
    ['they have the same keys', { layers, chords: [small(), { ...small(), id: 'same' }] }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(chordInsideChord, sketch)).toEqual([]);
  });

  it('says what delay it brings: the window of the larger one', () => {
    const [found] = says(chordInsideChord, { layers, chords: [small(), large()] });
    expect(found?.data).toMatchObject({ delayMs: 65, windowMs: 45 });
    expect(found?.severity).toBe('note');
  });
});
