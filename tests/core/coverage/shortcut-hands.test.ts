import { describe, expect, test } from 'vitest';
import { handsWords, routeHands } from '../../../src/core/coverage/shortcut-hands.ts';
import type { BoardKey, Keymap } from '../../../src/core/keymap/types.ts';
import type { Step } from '../../../src/core/routes/types.ts';

const key = (id: string, hand: BoardKey['hand'], finger: BoardKey['finger']): BoardKey => ({
  id,
  x: 0,
  y: 0,
  rotation: 0,
  width: 17,
  height: 17,
  hand,
  finger,
  home: false,
});

const keymap: Keymap = {
  format: 'neutral-keymap',
  version: 1,
  name: 'Six keys',
  board: {
    name: 'six keys',
    keys: [
      key('a', 'left', 'little'),
      key('z', 'left', 'little'),
      key('c', 'left', 'middle'),
      key('t', 'left', 'thumb'),
      key('j', 'right', 'index'),
      key('u', 'right', 'index'),
    ],
  },
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  layers: [{ id: 'base', name: 'Base', places: {} }],
};

/** "(a" holds, ")a" releases, "a+c" presses together, "a" presses. */
function hands(moves: string) {
  const steps = moves.split(' ').map((word): Step => {
    const keys = word.replace(/[()]/, '').split('+');
    if (word.startsWith(')')) return { move: 'release', keys };
    return { move: word.startsWith('(') ? 'hold' : 'press', keys, side: 'tap' };
  });
  return routeHands(keymap, { steps });
}

describe('hands and fingers of a route', () => {
  test.each([
    ['(t c )t', 'left hand alone'],
    ['(t j )t', 'both hands'],
    ['u', 'right hand alone'],
    ['(a z )a', 'left hand alone; the left little finger must be on two keys at once'],
    ['(a )a z', 'left hand alone; the left little finger presses two keys in turn'],
    ['(t j u )t', 'both hands; the right index finger presses two keys in turn'],
    ['a+z', 'left hand alone; the left little finger must be on two keys at once'],
    ['(a j )a', 'both hands'],
    ['j j', 'right hand alone'],
  ])('%s: %s', (moves, words) => {
    expect(handsWords(hands(moves))).toBe(words);
  });

  test('hands stand in the order in which they begin, and unknown keys are nobody’s', () => {
    expect(hands('(j a )j').hands).toEqual(['right', 'left']);
    expect(hands('nowhere')).toEqual({ hands: [], atOnce: [], inTurn: [] });
  });
});
