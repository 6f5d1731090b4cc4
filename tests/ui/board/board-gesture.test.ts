import { describe, expect, test } from 'vitest';
import {
  AT_REST,
  type GestureEffect,
  gestureAfter,
  type PointerMove,
} from '../../../src/ui/board/board-gesture.ts';

const at = (x: number, y: number, more: Partial<PointerMove> = {}): Partial<PointerMove> => ({
  at: { x, y },
  ...more,
});
const down = (x: number, y: number, more = {}) => ({ kind: 'down' as const, ...at(x, y, more) });
const move = (x: number, y: number, more = {}) => ({ kind: 'move' as const, ...at(x, y, more) });
const up = (x: number, y: number, more = {}) => ({ kind: 'up' as const, ...at(x, y, more) });

/** Plays pointer events and hands back all effects in order. */
function play(...moves: readonly (Partial<PointerMove> & Pick<PointerMove, 'kind'>)[]): GestureEffect[] {
  let gesture = AT_REST;
  return moves.flatMap((each) => {
    const full = {
      id: 1,
      at: { x: 0, y: 0 },
      touch: false,
      button: 0,
      onThing: false,
      shift: false,
      ...each,
    };
    const outcome = gestureAfter(gesture, full);
    gesture = outcome.gesture;
    return outcome.effects;
  });
}

const FINGER = { touch: true };
const SECOND = { touch: true, id: 2 };

describe('gestures on the board', () => {
  test('a click on the bare board clears, even if it trembles', () => {
    expect(play(down(10, 10), move(12, 11), up(12, 11))).toEqual([{ does: 'clear' }]);
  });

  test('a drag draws a lasso and catches once, when it is let go', () => {
    expect(play(down(10, 10), move(40, 30), move(50, 60), up(50, 60))).toEqual([
      {
        does: 'lasso',
        corners: [
          { x: 10, y: 10 },
          { x: 40, y: 30 },
        ],
      },
      {
        does: 'lasso',
        corners: [
          { x: 10, y: 10 },
          { x: 50, y: 60 },
        ],
      },
      { does: 'lasso', corners: null },
      {
        does: 'catch',
        corners: [
          { x: 10, y: 10 },
          { x: 50, y: 60 },
        ],
        add: false,
      },
    ]);
  });

  test('with Shift the catch is added', () => {
    const effects = play(down(0, 0, { shift: true }), move(40, 30), up(40, 30));
    expect(effects.at(-1)).toMatchObject({ does: 'catch', add: true });
  });

  test('a lasso that is cancelled leaves no trace', () => {
    const effects = play(down(0, 0), move(40, 30), { kind: 'cancel', at: { x: 40, y: 30 } });
    expect(effects.slice(1)).toEqual([{ does: 'lasso', corners: null }]);
  });

  test('the middle button pans, from a key as well', () => {
    const middle = { button: 1, onThing: true };
    expect(play(down(0, 0, middle), move(10, 0, middle), move(15, 5, middle), up(15, 5, middle))).toEqual([
      { does: 'pan', by: { x: 10, y: 0 } },
      { does: 'pan', by: { x: 5, y: 5 } },
    ]);
  });

  test('a press on a key is the key’s own affair', () => {
    expect(play(down(0, 0, { onThing: true }), move(40, 30), up(40, 30))).toEqual([]);
  });

  test('one finger pans, and never lassoes', () => {
    expect(play(down(0, 0, FINGER), move(0, 20, FINGER), up(0, 20, FINGER))).toEqual([
      { does: 'pan', by: { x: 0, y: 20 } },
    ]);
  });

  test('two fingers zoom about their middle and pan along, even on keys', () => {
    const onKey = { ...FINGER, onThing: true };
    const effects = play(down(0, 0, onKey), down(100, 0, { ...SECOND, onThing: true }), move(200, 0, SECOND));
    expect(effects).toEqual([
      { does: 'pan', by: { x: 50, y: 0 } },
      { does: 'zoom', at: { x: 100, y: 0 }, factor: 2 },
    ]);
  });

  test('after a pinch the finger that stays does nothing', () => {
    const pinch = [down(0, 0, FINGER), down(100, 0, SECOND), up(100, 0, SECOND)];
    expect(play(...pinch, move(30, 30, FINGER), up(30, 30, FINGER))).toEqual([]);
  });

  test('a pointer that was never pressed moves nothing', () => {
    expect(play(move(10, 10))).toEqual([]);
  });
});
