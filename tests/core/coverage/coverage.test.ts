import { describe, expect, test } from 'vitest';
import { costClassOf } from '../../../src/core/coverage/cost-class.ts';
import { listCoverage } from '../../../src/core/coverage/coverage.ts';
import { coverageMarkdown } from '../../../src/core/coverage/markdown.ts';
import { textLoad } from '../../../src/core/coverage/text-load.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { createTextCounter } from '../../../src/core/needs/text-counts.ts';
import type { Route, Step } from '../../../src/core/routes/types.ts';

/** A route in a tiny notation: "A" a press, "(A" a hold, "A+B" a chord; strokes and holds follow from it unless given. */
function route(char: string, moves: string, strokes = 1): Route {
  const steps: Step[] = moves.split(' ').map((move) => ({
    move: move.startsWith('(') ? 'hold' : 'press',
    keys: move.replace('(', '').split('+'),
    side: 'tap',
  }));
  return {
    need: { kind: 'char', char },
    cost: {
      strokes,
      presses: steps.flatMap((step) => step.keys).length,
      holds: steps.filter((step) => step.move === 'hold').length,
      waitMs: 0,
    },
    clumsy: false,
    steps,
    events: [],
  };
}

describe('a route belongs to one cost class', () => {
  test.each([
    ['A', 1, 'one press'],
    ['(A', 1, 'one hold'],
    ['(A B', 1, 'one hold'],
    ['A+B', 1, 'a chord'],
    ['(A B+C', 1, 'a chord'],
    ['A B', 1, 'two strokes'],
    ['A', 2, 'two strokes'],
    ['A B', 2, 'two strokes'],
    ['(A (B C', 1, 'three and more'],
    ['A B C', 3, 'three and more'],
    ['A', 3, 'three and more'],
  ])('%s with %i strokes: %s', (moves, strokes, expected) => {
    expect(costClassOf(route('x', moves, strokes))).toBe(expected);
  });
});

const key = (id: string, hand: 'left' | 'right', finger: 'index' | 'middle') => ({
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
  name: 'Two fingers',
  board: {
    name: 'four keys',
    keys: [
      key('F', 'left', 'index'),
      key('G', 'left', 'index'),
      key('D', 'left', 'middle'),
      key('J', 'right', 'index'),
    ],
  },
  hosts: [{ system: 'linux', layout: 'us', variant: '' }],
  layers: [{ id: 'base', name: 'Base', places: {} }],
};

const routes = new Map([
  ['f', route('f', 'F')],
  ['g', route('g', 'G')],
  ['d', route('d', 'D')],
  ['J', route('J', '(F J')],
]);
const routeOf = (char: string) => routes.get(char) ?? null;

function load(text: string) {
  const counter = createTextCounter();
  counter.add(text);
  return textLoad(keymap, counter.counts(), routeOf);
}

describe('what a text costs', () => {
  test('every press goes to its finger and hand, held keys too', () => {
    const found = load('fdJ');
    expect(found.pressesPerChar).toBeCloseTo(4 / 3);
    expect(found.holdsPerChar).toBeCloseTo(1 / 3);
    expect([...found.fingers]).toEqual([
      ['left index', 0.5],
      ['left middle', 0.25],
      ['right index', 0.25],
    ]);
    expect([...found.hands]).toEqual([
      ['left', 0.75],
      ['right', 0.25],
    ]);
  });

  test.each([
    ['fg', 1, 'two keys of one finger'],
    ['ff', 0, 'a double letter is no change of key'],
    ['fd', 0, 'two fingers'],
    ['gJ', 1, 'the next character begins with its held key'],
    ['Jf', 0, 'a character ends with the key inside the hold'],
    ['fgd', 0.5, 'one pair of two'],
    ['f?g', 0, 'a character without a route breaks the pair'],
  ])('%s: share %d of same-finger pairs (%s)', (text, share) => {
    expect(load(text).sameFingerPairs).toBe(share);
  });

  test('what cannot be typed is counted but costs nothing', () => {
    const found = load('f?');
    expect([found.typed, found.total, found.pressesPerChar]).toEqual([1, 2, 1]);
  });

  test('an empty text has no figures that are not numbers', () => {
    const found = load('');
    expect([found.pressesPerChar, found.holdsPerChar, found.sameFingerPairs]).toEqual([0, 0, 0]);
  });

  test('the characters that cost most in all come first', () => {
    expect(load('fffJJd').dearest.map(({ char, presses }) => [char, presses])).toEqual([
      ['J', 4],
      ['f', 3],
      ['d', 1],
    ]);
  });
});

describe('the coverage of a need list', () => {
  const list = listCoverage({
    name: 'own',
    title: 'Own list',
    needs: [
      { need: { kind: 'char', char: 'f' }, route: route('f', 'F') },
      { need: { kind: 'char', char: 'J' }, route: { ...route('J', '(F J'), clumsy: true } },
      { need: { kind: 'char', char: '|' }, route: null },
    ],
  });

  test('reached, clumsy and missing add up', () => {
    expect(list).toMatchObject({ total: 3, reached: 2, clumsy: 1, missing: 1, missingNeeds: ['|'] });
    expect(list.classes).toMatchObject({ 'one press': 1, 'one hold': 1 });
  });

  test('as Markdown it keeps its table whole, whatever the need', () => {
    const markdown = coverageMarkdown('Two fingers', [list], load('fJ'));
    expect(markdown).toContain('| Own list | 3 | 2 | 1 | 1 | 1 | 1 | 0 | 0 | 0 |');
    expect(markdown).toContain('Missing from Own list: `\\|`');
    expect(markdown).toContain('ask a doctor or physiotherapist');
  });
});
