import { describe, expect, test } from 'vitest';
import { costliest } from '../../../src/core/coverage/costliest.ts';
import { listCoverage } from '../../../src/core/coverage/coverage.ts';
import type { Need } from '../../../src/core/keymap/need.ts';
import { createTextCounter } from '../../../src/core/needs/text-counts.ts';
import { countOfNeed, needsOfText } from '../../../src/core/needs/text-needs.ts';
import type { NeedRoute, Step } from '../../../src/core/routes/types.ts';

/** A character that takes so many presses, one after the other in as many strokes; 0 presses: there is no way. */
function typed(char: string, presses: number, clumsy = false): NeedRoute {
  const need: Need = { kind: 'char', char };
  if (presses === 0) return { need, route: null };
  const steps = Array.from({ length: presses }, (): Step => ({ move: 'press', keys: ['k'], side: 'tap' }));
  const cost = { strokes: presses, presses, holds: 0, waitMs: 0 };
  return { need, route: { need, cost, clumsy, steps, events: [] } };
}

function countsOf(text: string) {
  const counter = createTextCounter();
  counter.add(text);
  return counter.counts();
}

const needs = [typed('a', 1), typed('b', 3), typed('c', 2, true), typed('d', 0)];
const chars = (found: ReturnType<typeof costliest>) =>
  found.map(({ need, extraPresses }) => [need.kind === 'char' && need.char, extraPresses]);

describe('the needs that cost most', () => {
  test('without a text: the dearest route first, missing ones left out', () => {
    expect(chars(costliest(needs, 9))).toEqual([
      ['b', 2],
      ['c', 1],
      ['a', 0],
    ]);
    expect(costliest(needs, 1)).toHaveLength(1);
  });

  test('with a text: presses beyond one each, and only what makes any there', () => {
    const counts = countsOf('aaaaacccb dd');
    expect(chars(costliest(needs, 9, (need) => countOfNeed(counts, need)))).toEqual([
      ['c', 3],
      ['b', 2],
    ]);
  });

  test('a need that several lists ask for stands once', () => {
    expect(costliest([...needs, typed('b', 3)], 9)).toHaveLength(3);
  });
});

describe('a list weighted by a text', () => {
  const counts = countsOf('aaab\nccc d');
  const list = listCoverage({ name: 'l', title: 'L', needs }, (need) => countOfNeed(counts, need));

  test('counts characters in place of needs', () => {
    expect(list).toMatchObject({ total: 8, reached: 7, clumsy: 3, missing: 1, missingNeeds: ['d'] });
    expect(list.classes).toMatchObject({ 'one press': 3, 'two strokes': 3, 'three and more': 1 });
  });
});

describe('the needs of a text', () => {
  test('line breaks and tabs are the keys Enter and Tab; frequent ones first, then by code unit', () => {
    expect(needsOfText(countsOf('ba\n\n\tb'))).toEqual([
      { kind: 'key', code: 'Enter' },
      { kind: 'char', char: 'b' },
      { kind: 'key', code: 'Tab' },
      { kind: 'char', char: 'a' },
    ]);
  });

  test.each<[Need, number]>([
    [{ kind: 'char', char: 'b' }, 2],
    [{ kind: 'key', code: 'Enter' }, 1],
    [{ kind: 'key', code: 'Escape' }, 0],
    [{ kind: 'shortcut', modifiers: ['Control'], code: 'KeyB' }, 0],
    [{ kind: 'char', char: 'ü' }, 1],
  ])('%j stands %i times', (need, count) => {
    expect(countOfNeed(countsOf('bb\nu\u0308'), need)).toBe(count);
  });
});
