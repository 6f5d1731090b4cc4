import { describe, expect, it } from 'vitest';
import { chordNeverFires } from '../../../../src/core/findings/rules/chord-never-fires.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const empty = '· · · · · · · · · ·';
const layers = { base: '@up b c d e f g h i j', up: empty };

describe('chord-never-fires', () => {
  it.each<[string, Sketch, readonly string[]]>([
    [
      'one of its keys holds the only layer it is live on',
      { layers, chords: [chord('c', 'L2 L1', 45, 'Tab', ['up'])] },
      ['key-is-down | L1 L2 | up | c'],
    ],
    [
      'nobody can enter its layer',
      {
        layers: { base: 'a b c d e f g h i j', up: empty },
        chords: [chord('c', 'L1 L2', 45, 'Tab', ['up'])],
      },
      ['layer-never-entered | L1 L2 | up | c'],
    ],
    [
      'another layer is always above its own',
      {
        layers: { base: '@up b c d e f g h i j', up: empty, over: empty },
        onWhile: { over: ['base', 'up'] },
        chords: [chord('c', 'L2 L3', 45, 'Tab', ['up'])],
      },
      ['never-on-top | L2 L3 | up | c'],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(chordNeverFires, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    [
      'it is live on the base layer too',
      { layers, chords: [chord('c', 'L1 L2', 45, 'Tab', ['base', 'up'])] },
    ],
    ['its keys are free on its layer', { layers, chords: [chord('c', 'L2 L3', 45, 'Tab', ['up'])] }],
    [
      'a lock leads to its layer',
      {
        layers: { base: '@up:lock b c d e f g h i j', up: empty },
        chords: [chord('c', 'L1 L2', 45, 'Tab', ['up'])],
      },
    ],
    [
      'an earlier one with the same keys takes it, which another rule says',
      { layers, chords: [chord('a', 'L2 L3', 45, 'Tab'), chord('b', 'L2 L3', 45, 'Enter')] },
    ],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(chordNeverFires, sketch)).toEqual([]);
  });

  it('offers to delete it, and to enter its layer where that is what is wrong', () => {
    const [down] = says(chordNeverFires, { layers, chords: [chord('c', 'L2 L1', 45, 'Tab', ['up'])] });
    expect(down?.mends.map(({ edits }) => edits[0]?.edit)).toEqual(['delete-chord']);
    const [closed] = says(chordNeverFires, {
      layers: { base: 'a b c d e f g h · ·', up: empty },
      chords: [chord('c', 'L1 L2', 45, 'Tab', ['up'])],
    });
    expect(closed?.mends.map(({ edits }) => edits[0]?.edit)).toEqual(['bind', 'delete-chord']);
  });
});
