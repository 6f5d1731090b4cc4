import { describe, expect, it } from 'vitest';
import { chordUsesHoldTap } from '../../../../src/core/findings/rules/chord-uses-hold-tap.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const base = 'a b⇩AltLeft c⇩ControlLeft d e f g h i⇩@up j';
const layers = { base, up: '1 2 3 · · · · · · ·' };

describe('chord-uses-hold-tap', () => {
  it.each<[string, Sketch, readonly string[]]>([
    [
      'one of its keys has a hold',
      { layers, chords: [chord('c', 'L1 L2', 45, 'Tab')] },
      ['waits-first | L2 |  | c'],
    ],
    [
      'two of its keys have holds',
      { layers, chords: [chord('c', 'L3 L2', 45, 'Tab', ['base'])] },
      ['waits-first | L2 L3 |  | c'],
    ],
    [
      'the hold shows through from the base layer',
      { layers: { base, up: '1 2 · · · · · · · ·' }, chords: [chord('c', 'L3 L4', 45, 'Tab', ['up'])] },
      ['waits-first | L3 |  | c'],
    ],
    [
      'its window outlasts the hold',
      { layers, timing: { holdAfterMs: 60 }, chords: [chord('c', 'L1 L2', 60, 'Tab')] },
      ['outlasts-hold | L2 |  | c'],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(chordUsesHoldTap, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['its keys only type', { layers, chords: [chord('c', 'L1 L4', 45, 'Tab')] }],
    [
      'the layer that it is live on covers the hold',
      { layers, chords: [chord('c', 'L1 L2', 45, 'Tab', ['up'])] },
    ],
    [
      'a key has a hold alone',
      { layers: { base: '⇩ShiftLeft b c d e f g h i j' }, chords: [chord('c', 'L1 L2', 45, 'Tab')] },
    ],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(chordUsesHoldTap, sketch)).toEqual([]);
  });

  it('is a note, and risky where the hold comes late', () => {
    const at = (holdAfterMs: number) =>
      says(chordUsesHoldTap, {
        layers,
        timing: { holdAfterMs },
        chords: [chord('c', 'L1 L2', 45, 'Tab')],
      })[0];
    expect(at(46)).toMatchObject({ severity: 'note', data: { windowMs: 45, holdAfterMs: 46 } });
    expect(at(45)).toMatchObject({ severity: 'risky', data: { windowMs: 45, holdAfterMs: 45 } });
  });
});
