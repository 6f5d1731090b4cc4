import { describe, expect, it } from 'vitest';
import { chordWindowOutsideHands } from '../../../../src/core/findings/rules/chord-window-outside-hands.ts';
import { chord, says } from '../design.ts';

const layers = { base: '@up b c d e f g h i j', up: '· · · · · · · · · ·' };
const about = (keys: string, windowMs: number) =>
  says(chordWindowOutsideHands, { layers, chords: [chord('c', keys, windowMs, 'Tab')] })[0];

/** Spread of skilled hands: computed from the Vienna 4x22 piano performances (Goebl). */
describe('chord-window-outside-hands', () => {
  it.each([
    ['L1 L2', 24, 'not-validated', 35],
    ['L1 L2', 25, 'too-short', 34],
    ['L1 L2', 37, 'too-short', 12],
    ['L2 L3 L4', 45, 'too-short', 19],
    ['L2 L3 L4', 25, 'too-short', 50],
    ['L4 R4', 35, 'too-short', 20],
    ['L3 L4 R4', 45, 'too-short', 27],
    ['L1 L2 L3 L4', 45, 'too-short', 19],
    ['L1 L2', 91, 'too-long', 1],
    ['L2 L3 L4', 127, 'too-long', 5],
    ['L4 R4', 107, 'too-long', 5],
    ['L3 L4 R4', 133, 'too-long', 1],
  ] as const)('%s within %d ms: %s, %d percent missed', (keys, windowMs, messageId, missedPercent) => {
    expect(about(keys, windowMs)).toMatchObject({
      messageId,
      severity: 'risky',
      subjects: { chords: ['c'] },
      data: { windowMs, missedPercent },
    });
  });

  it.each([
    ['L1 L2', 38],
    ['L1 L2', 45],
    ['L1 L2', 90],
    ['L2 L3 L4', 51],
    ['L2 L3 L4', 126],
    ['L4 R4', 41],
    ['L4 R4', 106],
    ['L3 L4 R4', 55],
    ['L3 L4 R4', 132],
  ] as const)('keeps quiet of %s within %d ms', (keys, windowMs) => {
    expect(about(keys, windowMs)).toBeUndefined();
  });

  it.each([
    ['L1 L2', 45],
    ['L2 L3 L4', 65],
    ['L4 R4', 55],
    ['L3 L4 R4', 70],
  ] as const)('offers %s the window that skilled hands keep in 95 of 100 chords, %d ms', (keys, windowMs) => {
    expect(about(keys, 10)?.mends[0]?.edits).toEqual([
      { edit: 'change-chord', chord: 'c', to: { windowMs } },
    ]);
    expect(about(keys, 500)?.mends[0]?.edits).toEqual([
      { edit: 'change-chord', chord: 'c', to: { windowMs } },
    ]);
  });

  it('offers nothing where the new window would take another chord or outlast a hold', () => {
    const twins = says(chordWindowOutsideHands, {
      layers,
      chords: [chord('c', 'L1 L2', 30, 'Tab'), chord('d', 'L1 L2', 40, 'Enter')],
    });
    expect(twins.map(({ mends }) => mends)).toEqual([[]]);
    const hasty = says(chordWindowOutsideHands, {
      layers: { base: 'a⇩ShiftLeft b c d e f g h i j' },
      timing: { holdAfterMs: 40 },
      chords: [chord('c', 'L1 L2', 30, 'Tab')],
    });
    expect(hasty.map(({ mends }) => mends)).toEqual([[]]);
  });
});
