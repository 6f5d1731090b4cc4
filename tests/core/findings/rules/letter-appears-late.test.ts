import { describe, expect, it } from 'vitest';
import { letterAppearsLate } from '../../../../src/core/findings/rules/letter-appears-late.ts';
import { chord, inShort, type Sketch, says } from '../design.ts';

const layers = { base: 'a b c d e f g h i Space' };
const typing = { text: 'abab eded abe', wpm: 99 };
const sketch = { layers, typing, chords: [chord('tab', 'L1 L2 L3', 50, 'Tab')] };

describe('letter-appears-late', () => {
  it('says so of frequent letters that wait for a chord', () => {
    expect(inShort(says(letterAppearsLate, sketch))).toEqual([
      'waits | L1 | base | ',
      'waits | L2 | base | ',
    ]);
  });

  it('says so of a letter that waits for its hold', () => {
    const held = { layers: { base: 'a⇩ShiftLeft b c d e f g h i Space' }, typing };
    const [found] = says(letterAppearsLate, held);
    expect(inShort(found === undefined ? [] : [found])).toEqual(['waits | L1 | base | ']);
    // A tap appears when the key comes up: after its dwell, on the little finger some 110 ms.
    expect(found?.data.meanMs).toBeGreaterThan(80);
    expect(found?.data.meanMs).toBeLessThan(140);
  });

  it.each<[string, Sketch]>([
    ['nothing is known of the typing', { layers, chords: sketch.chords }],
    ['they are rare', { ...sketch, typing: { ...typing, limits: { frequentPer1000Words: 4000 } } }],
    ['the wait is short', { ...sketch, chords: [chord('tab', 'L1 L2 L3', 30, 'Tab')] }],
    [
      'quick typing does not wait',
      { ...sketch, chords: [chord('tab', 'L1 L2 L3', 50, 'Tab', ['base'], 200)] },
    ],
    [
      'what waits is no letter',
      { ...sketch, chords: [chord('tab', 'L4 RT', 50, 'Tab')], typing: { text: 'a a' } },
    ],
  ])('keeps quiet when %s', (_, near) => {
    expect(says(letterAppearsLate, near)).toEqual([]);
  });

  it('offers quiet before for the chords it waits for, where that is enough', () => {
    const [found] = says(letterAppearsLate, sketch);
    expect(found?.mends[0]?.edits).toEqual([
      { edit: 'change-chord', chord: 'tab', to: { quietBeforeMs: 150 } },
    ]);
  });

  it('offers none where two chords with the same keys are told apart by their quiet before', () => {
    const twins = [chord('tab', 'L1 L2 L3', 50, 'Tab', ['base'], 100), chord('end', 'L1 L2 L3', 50, 'End')];
    const [found] = says(letterAppearsLate, { ...sketch, chords: twins });
    expect(found?.mends).toEqual([]);
  });
});
