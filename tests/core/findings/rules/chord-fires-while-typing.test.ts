import { describe, expect, it } from 'vitest';
import { chordFiresWhileTyping } from '../../../../src/core/findings/rules/chord-fires-while-typing.ts';
import { chord, factsFor, inShort, type Sketch, says } from '../design.ts';

const layers = { base: 'a b c d e f g h i Space' };
const typing = { text: 'cdcd dcdc cd cd' };
const sketch = { layers, typing, chords: [chord('tab', 'L3 L4', 60, 'Tab')] };

describe('chord-fires-while-typing', () => {
  it('says so of a chord over two letters that often follow one another', () => {
    const found = says(chordFiresWhileTyping, sketch);
    expect(inShort(found)).toEqual(['fires | L3 L4 |  | tab']);
    expect(found[0]?.message).toMatch(/mostly at “(cd|dc)” and “(cd|dc)”\.$/);
  });

  it.each<[string, Sketch]>([
    ['nothing is known of the typing', { layers, chords: sketch.chords }],
    ['its letters never meet', { ...sketch, typing: { text: 'c.d. a c.d. a' } }],
    ['the window is too short for typing', { ...sketch, chords: [chord('tab', 'L3 L4', 1, 'Tab')] }],
    ['so much is let pass', { ...sketch, typing: { ...typing, limits: { chordPer1000Words: 100_000 } } }],
    ['a simulation alone could say', { ...sketch, chords: [chord('tab', 'L1 L2 L3 L4 R4', 60, 'Tab')] }],
  ])('keeps quiet when %s', (_, { ...near }) => {
    expect(says(chordFiresWhileTyping, near)).toEqual([]);
  });

  it('offers a shorter window where that is enough, and never a shorter one than hands need', () => {
    const rate = (windowMs: number) =>
      factsFor({ ...sketch, chords: [chord('tab', 'L3 L4', windowMs, 'Tab')] }).accidents?.estimate.chords[0]
        ?.misfiresPer1000Words ?? 0;
    const limits = { chordPer1000Words: (rate(50) + rate(55)) / 2 };
    const [found] = says(chordFiresWhileTyping, { ...sketch, typing: { ...typing, limits } });
    expect(found?.mends.flatMap(({ edits }) => edits)).toEqual([
      { edit: 'change-chord', chord: 'tab', to: { windowMs: 50 } },
    ]);
    const tooFew = { chordPer1000Words: rate(20) };
    const [other] = says(chordFiresWhileTyping, { ...sketch, typing: { ...typing, limits: tooFew } });
    expect(other?.mends.some(({ title }) => title.includes('a window'))).toBe(false);
  });

  it('asks for quiet before where no window is short enough', () => {
    const rate = (quietBeforeMs: number, windowMs: number) =>
      factsFor({ ...sketch, chords: [chord('tab', 'L3 L4', windowMs, 'Tab', undefined, quietBeforeMs)] })
        .accidents?.estimate.chords[0]?.misfiresPer1000Words ?? 0;
    const limit = rate(150, 60) * 1.01;
    expect(limit).toBeLessThan(rate(0, 45));
    const limits = { chordPer1000Words: limit };
    const [found] = says(chordFiresWhileTyping, { ...sketch, typing: { ...typing, limits } });
    expect(found?.mends.flatMap(({ edits }) => edits)).toEqual([
      { edit: 'change-chord', chord: 'tab', to: { quietBeforeMs: 150 } },
    ]);
  });
});
