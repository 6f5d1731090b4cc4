import { describe, expect, test } from 'vitest';
import { draftOf } from '../../../../../src/core/board/draft.ts';
import type { BoardLosses } from '../../../../../src/core/board/what-is-lost.ts';
import { steadyFrame } from '../../../../../src/ui/desks/design/board-editor/canvas-frame.ts';
import {
  farWords,
  isChanged,
  keptWords,
  lossLines,
  overlapWords,
  reachWords,
  shapeLabel,
  sizeWords,
  spokenAfter,
} from '../../../../../src/ui/desks/design/board-editor/shape-words.ts';
import { readyBoard } from '../../../../core/board/boards.ts';

const BOARD = readyBoard('split-36');
const NONE: BoardLosses = { keptBindings: 0, lostBindings: 0, keys: [], chords: [], notes: 0 };

describe('what a board takes and leaves', () => {
  test.each([
    [{ ...NONE }, 'Nothing is bound yet, so nothing can lose its place.'],
    [{ ...NONE, keptBindings: 1 }, 'The one binding keeps its place.'],
    [{ ...NONE, keptBindings: 12 }, 'All 12 bindings keep their place.'],
    [
      { ...NONE, keptBindings: 11, lostBindings: 1 },
      '11 of 12 bindings keep their place, one loses its place.',
    ],
    [{ ...NONE, keptBindings: 9, lostBindings: 3 }, '9 of 12 bindings keep their place, 3 lose their place.'],
  ])('%o: %s', (losses, words) => {
    expect(keptWords(losses)).toBe(words);
  });

  test('is listed by key, chord and notes', () => {
    const lines = lossLines({
      ...NONE,
      keys: [
        {
          key: 'L11',
          name: 'left little top',
          bindings: [
            { layer: 'Base', words: 'q' },
            { layer: 'Moves', words: ',' },
          ],
        },
      ],
      chords: [
        { name: 'Tab', lost: ['left little top'], goes: true },
        { name: 'Find', lost: ['left little top'], goes: false },
      ],
      notes: 2,
    });
    expect(lines.map(({ text }) => text)).toEqual([
      'left little top – Base: q  ·  Moves: ,',
      'the chord Tab goes: it loses left little top',
      'the chord Find loses left little top',
      '2 notes of the diary: what they are pinned to',
    ]);
  });
});

describe('a board in words', () => {
  test('its size, its keys, its faults', () => {
    expect(sizeWords(BOARD)).toMatch(/^36 keys, \d{3} × \d{2,3} mm$/);
    const key = BOARD.keys.find(({ id }) => id === 'R22');
    expect(key && shapeLabel(BOARD, key, true)).toMatch(
      /^right index home; across .* mm, down .* mm, turned −8°; new$/,
    );
    expect(overlapWords(BOARD, ['L22', 'L23'])).toBe('left index home and left middle home overlap.');
    expect(farWords(BOARD, { key: 'L12', home: 'L22', mm: 50.4 })).toContain(
      'lies 50 mm from left index home',
    );
  });

  test('lengths are told in inches where these are settled', () => {
    const [key] = BOARD.keys;
    expect(farWords(BOARD, { key: 'L12', home: 'L22', mm: 50.8 }, 'inch')).toContain('lies 2.0 in from');
    expect(reachWords('inch')).toMatch(/^Beyond \d\.\d in /);
    expect(key && shapeLabel(BOARD, key, false, 'inch')).toMatch(/across -?[\d.]+ in, down -?[\d.]+ in/);
  });

  test('what is said after a step by keyboard', () => {
    expect(spokenAfter('Move a key', BOARD, 'R22')).toMatch(/^Move a key: right index home; across /);
    expect(spokenAfter('Remove a key', BOARD, 'gone')).toBe('Remove a key: done');
  });

  test('whether it differs from the design’s', () => {
    const draft = draftOf(BOARD);
    expect(isChanged(draft)).toBe(false);
    expect(isChanged({ ...draft, board: structuredClone(BOARD) })).toBe(false);
    expect(isChanged({ ...draft, board: { ...BOARD, name: 'Other' } })).toBe(true);
  });
});

test('the frame stays while the board fits and fills it', () => {
  const frame = steadyFrame(null, BOARD);
  const shrunk = { ...BOARD, keys: BOARD.keys.slice(1) };
  expect(steadyFrame(frame, shrunk)).toBe(frame);
  const wide = { ...BOARD, keys: BOARD.keys.map((key) => ({ ...key, x: key.x * 1.2 })) };
  expect(steadyFrame(frame, wide).width).toBeGreaterThan(frame.width);
  expect(steadyFrame(frame, { ...BOARD, keys: BOARD.keys.slice(0, 18) }).width).toBeLessThan(frame.width);
});
