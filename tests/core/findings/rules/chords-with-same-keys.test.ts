import { describe, expect, it } from 'vitest';
import { chordsWithSameKeys } from '../../../../src/core/findings/rules/chords-with-same-keys.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const layers = { base: '@up b c d e f g h i j', up: '· · · · · · · · · ·' };
const tab = (windowMs: number, on?: readonly string[], quiet?: number) =>
  chord('tab', 'L3 L4', windowMs, 'Tab', on, quiet);
const enter = (windowMs: number, on?: readonly string[], quiet?: number) =>
  chord('enter', 'L4 L3', windowMs, 'Enter', on, quiet);

describe('chords-with-same-keys', () => {
  it.each<[string, Sketch, readonly string[]]>([
    [
      'both are live everywhere',
      { layers, chords: [tab(45), enter(45)] },
      ['never-fires | L3 L4 | base up | enter tab'],
    ],
    [
      'they share one layer',
      { layers, chords: [tab(45, ['base']), enter(45)] },
      ['never-fires | L3 L4 | base | enter tab'],
    ],
    [
      'the later one has a longer window',
      { layers, chords: [tab(30), enter(45)] },
      ['seldom-fires | L3 L4 | base up | enter tab'],
    ],
    [
      'the earlier one asks for quiet',
      { layers, chords: [tab(45, undefined, 100), enter(45)] },
      ['seldom-fires | L3 L4 | base up | enter tab'],
    ],
    [
      'there are three',
      { layers, chords: [tab(45), enter(45), { ...enter(45), id: 'third' }] },
      ['never-fires | L3 L4 | base up | enter tab', 'never-fires | L3 L4 | base up | third tab'],
    ],
  ])('says so when %s', (_, sketch, expected) => {
    expect(inShort(says(chordsWithSameKeys, sketch))).toEqual(expected);
  });

  it.each<[string, Sketch]>([
    ['they share no layer', { layers, chords: [tab(45, ['base']), enter(45, ['up'])] }],
    ['one has a key more', { layers, chords: [tab(45), chord('more', 'L2 L3 L4', 45, 'Enter')] }],
    ['one key differs', { layers, chords: [tab(45), chord('other', 'L2 L3', 45, 'Enter')] }],
  ])('keeps quiet when %s', (_, sketch) => {
    expect(says(chordsWithSameKeys, sketch)).toEqual([]);
  });

  it('is broken where the later one never fires, risky where it seldom does', () => {
    const severityOf = (earlier: number, later: number) =>
      says(chordsWithSameKeys, { layers, chords: [tab(earlier), enter(later)] })[0]?.severity;
    expect(severityOf(45, 45)).toBe('broken');
    expect(severityOf(45, 46)).toBe('risky');
  });

  it('offers to keep the later one where it is alone, else to delete it', () => {
    const mendFor = (on?: readonly string[]) =>
      says(chordsWithSameKeys, { layers, chords: [tab(45, ['base']), enter(45, on)] })[0]?.mends[0]?.edits;
    expect(mendFor()).toEqual([{ edit: 'change-chord', chord: 'enter', to: { layers: ['up'] } }]);
    expect(mendFor(['base'])).toEqual([{ edit: 'delete-chord', chord: 'enter' }]);
  });
});
