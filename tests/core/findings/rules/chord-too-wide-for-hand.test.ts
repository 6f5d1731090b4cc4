import { describe, expect, it } from 'vitest';
import {
  chordTooWideForHand,
  WITH_THUMB_MM,
  WITHOUT_THUMB_MM,
} from '../../../../src/core/findings/rules/chord-too-wide-for-hand.ts';
import { BOARD, chord, says } from '../design.ts';

/** The ten keys with the left little finger's key, or the left thumb's, moved so that it is that far from L4. */
function boardWith(id: string, distanceMm: number) {
  return {
    ...BOARD,
    keys: BOARD.keys.map((key) => (key.id === id ? { ...key, x: 54 - distanceMm, y: 0 } : key)),
  };
}
const layers = { base: '· · · · · · · · · ·' };
const about = (keys: string, moved: string, distanceMm: number) =>
  says(chordTooWideForHand, {
    board: boardWith(moved, distanceMm),
    layers,
    chords: [chord('c', keys, 60, 'Tab')],
  });

describe('chord-too-wide-for-hand', () => {
  it.each([
    ['L1 L4', 'L1', WITHOUT_THUMB_MM + 1, WITHOUT_THUMB_MM],
    ['LT L4', 'LT', WITH_THUMB_MM + 1, WITH_THUMB_MM],
    ['LT L1 L4', 'L1', WITHOUT_THUMB_MM + 1, WITHOUT_THUMB_MM],
  ] as const)('says so of %s with %s too far off', (keys, moved, spanMm, limitMm) => {
    const found = about(keys, moved, spanMm);
    expect(found).toHaveLength(1);
    expect(found[0]).toMatchObject({
      messageId: 'too-wide',
      severity: 'risky',
      data: { hand: 'left', spanMm, limitMm },
    });
    expect(found[0]?.subjects.chords).toEqual(['c']);
  });

  it.each([
    ['L1 L4', 'L1', WITHOUT_THUMB_MM],
    ['LT L4', 'LT', WITH_THUMB_MM],
    ['LT L4', 'LT', WITHOUT_THUMB_MM + 1],
    ['L1 R1', 'L1', 30],
  ] as const)('keeps quiet of %s with %s at the limit or across hands', (keys, moved, distanceMm) => {
    expect(about(keys, moved, distanceMm)).toEqual([]);
  });
});
