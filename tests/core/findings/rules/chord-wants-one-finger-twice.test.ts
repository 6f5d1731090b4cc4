import { describe, expect, it } from 'vitest';
import { chordWantsOneFingerTwice } from '../../../../src/core/findings/rules/chord-wants-one-finger-twice.ts';
import type { Board } from '../../../../src/core/keymap/types.ts';
import { BOARD, chord, inShort, says } from '../design.ts';

/** The ten keys, and two more for the left index finger: one right above its home key, one a row farther. */
const board: Board = {
  ...BOARD,
  keys: [
    ...BOARD.keys.filter((key) => key.id !== 'R1' && key.id !== 'R2'),
    ...[1, 2].map((row) => ({
      id: `U${row}`,
      x: 54,
      y: -18 * row,
      rotation: 0,
      width: 17,
      height: 16,
      hand: 'left' as const,
      finger: 'index' as const,
      home: false,
    })),
  ],
};
const layers = { base: '· · · · · · · · · ·' };
const about = (keys: string) =>
  says(chordWantsOneFingerTwice, { board, layers, chords: [chord('c', keys, 60, 'Tab')] });

describe('chord-wants-one-finger-twice', () => {
  it.each([
    ['L4 U1', 'on-the-edge | L4 U1 |  | c', 'note', 2],
    ['L4 U2', 'too-far-apart | L4 U2 |  | c', 'risky', 20],
    ['L4 L3 U2', 'too-far-apart | L4 U2 |  | c', 'risky', 20],
    ['U1 L4 U2', 'too-far-apart | U1 L4 U2 |  | c', 'risky', 20],
  ] as const)('says so of %s', (keys, expected, severity, gapMm) => {
    const found = about(keys);
    expect(inShort(found)).toEqual([expected]);
    expect(found[0]).toMatchObject({ severity, data: { gapMm } });
  });

  it.each(['L3 L4', 'L4 R4', 'L1 L2 L3 L4', 'LT U1'])('keeps quiet of %s', (keys) => {
    expect(about(keys)).toEqual([]);
  });
});
