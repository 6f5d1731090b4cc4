import { describe, expect, it } from 'vitest';
import { chordWindowUnderYourSpread } from '../../../../src/core/findings/rules/chord-window-under-your-spread.ts';
import { chord, factsFor, inShort, type Sketch, says } from '../design.ts';

const layers = { base: 'a b c d e f g h i Space' };
const typing = { text: 'a e. i o.', spread: 2 };
const sketch = { layers, typing, chords: [chord('tab', 'L1 L2', 50, 'Tab')] };

describe('chord-window-under-your-spread', () => {
  it('says so where skilled hands would do and this typist would not', () => {
    const found = says(chordWindowUnderYourSpread, sketch);
    expect(inShort(found)).toEqual(['misses | L1 L2 |  | tab']);
    // Two onsets of SD 32 ms: their difference is normal with SD 32 √2, within 50 ms in 73 of 100.
    expect(found[0]?.data).toMatchObject({ missedPercent: 27, neededMs: 90 });
  });

  it.each<[string, Sketch]>([
    ['nothing is known of the typist', { layers, chords: sketch.chords }],
    ['the typist’s hands are skilled', { ...sketch, typing: { text: 'a e. i o.' } }],
    ['the window is long enough', { ...sketch, chords: [chord('tab', 'L1 L2', 90, 'Tab')] }],
    ['it is too short for anybody', { ...sketch, chords: [chord('tab', 'L1 L2', 30, 'Tab')] }],
    ['so many misses are let pass', { ...sketch, typing: { ...typing, limits: { missedPercent: 30 } } }],
  ])('keeps quiet when %s', (_, near) => {
    expect(says(chordWindowUnderYourSpread, near)).toEqual([]);
  });

  it('offers the window that catches 95 in 100', () => {
    const [found] = says(chordWindowUnderYourSpread, sketch);
    expect(found?.mends[0]?.edits).toEqual([{ edit: 'change-chord', chord: 'tab', to: { windowMs: 90 } }]);
  });

  it('offers nothing where typing would then set the chord off, or a hold would come late', () => {
    const rate = (windowMs: number) =>
      factsFor({ ...often, chords: [chord('tab', 'L1 L2', windowMs, 'Tab')] }).accidents?.estimate.chords[0]
        ?.misfiresPer1000Words ?? 0;
    const often = { layers, typing: { text: 'ab ab abab ba', spread: 2 } };
    const limits = { chordPer1000Words: (rate(50) + rate(90)) / 2 };
    const sets = { ...sketch, typing: { ...often.typing, limits } };
    const late = {
      ...sketch,
      layers: { base: 'a⇩ShiftLeft b c d e f g h i Space' },
      timing: { holdAfterMs: 90 },
    };
    for (const each of [sets, late])
      expect(says(chordWindowUnderYourSpread, each).map(({ mends }) => mends.length)).toEqual([0]);
  });
});
