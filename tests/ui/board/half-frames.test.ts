import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { boardScene } from '../../../src/ui/board/board-scene.ts';
import { fitted, fittedTo, shownFrame } from '../../../src/ui/board/camera.ts';
import { halfFrame, handOf } from '../../../src/ui/board/half-frames.ts';
import { board36, design } from './sample.ts';

const board = board36();
const whole = boardScene({ keymap: design(), frontLayer: 'base', host: usHost }).frame;

describe('one half of a board', () => {
  test.each(['left', 'right'] as const)(
    'the %s one has every cap of that hand and none of the other',
    (hand) => {
      const frame = halfFrame(board, hand);
      if (frame === null) throw new Error(`a split board without a ${hand} half`);
      const inside = board.keys.filter(({ x }) => x > frame.x && x < frame.x + frame.width);
      expect(new Set(inside.map((key) => key.hand))).toEqual(new Set([hand]));
      expect(inside).toHaveLength(18);
    },
  );

  test('a board for one hand has no other half', () => {
    const oneHanded = { ...board, keys: board.keys.filter(({ hand }) => hand === 'left') };
    expect(halfFrame(oneHanded, 'right')).toBeNull();
  });

  test('keys of one hand tell which; keys of both, and none, do not', () => {
    expect(handOf(board, ['L22', 'LT1'])).toBe('left');
    expect(handOf(board, ['R22'])).toBe('right');
    expect(handOf(board, ['L22', 'R22'])).toBeNull();
    expect(handOf(board, [])).toBeNull();
  });
});

describe('the camera fitted to a part', () => {
  const left = halfFrame(board, 'left') ?? whole;

  test('the whole board is zoom 1', () => {
    expect(fittedTo(whole, whole, { width: 390, height: 300 })).toEqual(fitted(whole));
  });

  test('in a narrow window a half has its full width in view, and its keys are about twice as large', () => {
    const camera = fittedTo(left, whole, { width: 390, height: 300 });
    expect(camera.zoom).toBeGreaterThan(1.8);
    const shown = shownFrame(camera, whole);
    expect(shown.x).toBeLessThanOrEqual(left.x);
    expect(shown.x + shown.width).toBeGreaterThanOrEqual(left.x + left.width);
  });

  test('a flat window limits the zoom by the height', () => {
    expect(fittedTo(left, whole, { width: 2000, height: 300 }).zoom).toBeCloseTo(whole.height / left.height);
  });
});
