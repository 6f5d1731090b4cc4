import { describe, expect, test } from 'vitest';
import { parseNeed } from '../../../../../src/core/keymap/need.ts';
import type { NeedRoute, Route, Step } from '../../../../../src/core/routes/types.ts';
import { actionOfNeed } from '../../../../../src/ui/desks/design/needs/action-of-need.ts';
import { groupNeeds } from '../../../../../src/ui/desks/design/needs/need-groups.ts';
import {
  countByStatus,
  keptRows,
  needRows,
  searchNeeds,
} from '../../../../../src/ui/desks/design/needs/need-rows.ts';

function needOf(text: string) {
  const need = parseNeed(text);
  if (!need.ok) throw new Error(need.problem);
  return need.value;
}

/** A need and its way in a tiny notation: "A" a press, "(A" a hold, "A+B" a chord; null where there is none. */
function way(text: string, moves: string | null, more: Partial<Route> = {}): NeedRoute {
  const need = needOf(text);
  if (moves === null) return { need, route: null };
  const steps: Step[] = moves.split(' ').map((move) => ({
    move: move.startsWith('(') ? 'hold' : 'press',
    keys: move.replace('(', '').split('+'),
    side: 'tap',
  }));
  const presses = steps.flatMap(({ keys }) => keys).length;
  const holds = steps.filter(({ move }) => move === 'hold').length;
  const cost = { strokes: 1, presses, holds, waitMs: 0 };
  return { need, route: { need, cost, clumsy: false, steps, events: [], ...more } };
}

describe('a need as the list shows it', () => {
  test.each([
    [way('a', 'A'), 'a', 'reached', '1 press'],
    [way(' ', 'A'), '␣', 'reached', '1 press'],
    [way('A', '(A B'), 'A', 'reached', '2 presses, 1 held'],
    [way('key:Tab', 'A+B+C'), 'Tab', 'reached', 'chord of 3'],
    [way('A', '(A B', { clumsy: true }), 'A', 'clumsy', '2 presses, 1 held'],
    [way('`', null), '`', 'missing', 'no way to type it'],
  ])('%#: %o', (need, glyph, status, cost) => {
    expect(needRows([need])[0]).toMatchObject({ glyph, status, cost });
  });

  test('strokes and waits are said where they matter', () => {
    const slow = way('é', 'A B', { cost: { strokes: 2, presses: 2, holds: 0, waitMs: 200.4 } });
    expect(needRows([slow])[0]?.cost).toBe('2 strokes, 2 presses, waits 200 ms');
  });
});

const rows = needRows([way('a', 'A'), way(' ', 'B'), way('key:ArrowLeft', 'C'), way('`', null)]);

test.each([
  ['', ['a', ' ', 'key:ArrowLeft', '`']],
  ['a', ['a', ' ', 'key:ArrowLeft']],
  [' ', [' ']],
  ['arrow', ['key:ArrowLeft']],
  ['ARROWLEFT', ['key:ArrowLeft']],
  ['miss', ['`']],
  ['zzz', []],
])('a search for %j leaves %j', (query, left) => {
  expect(searchNeeds(rows, query).map(({ text }) => text)).toEqual(left);
});

test('how many stand how', () => {
  expect(countByStatus(rows)).toEqual({ missing: 1, clumsy: 0, reached: 3 });
});

test('a need of several lists stands under the first, and a list without any is left out', () => {
  const source = (name: string, ...needs: string[]) => ({ name, title: name, needs: new Set(needs) });
  const groups = groupNeeds(rows, [source('one', 'a', '`'), source('two', '`', ' '), source('three', '`')]);
  expect(groups.map(({ name, rows: own, missing }) => [name, own.map(({ text }) => text), missing])).toEqual([
    ['one', ['a', '`'], 1],
    ['two', [' '], 0],
  ]);
});

test('rows of which nothing has come stay the same; another way or standing makes another row', () => {
  const next = needRows([way('a', 'A'), way(' ', 'X'), way('`', 'C')]);
  const kept = keptRows(rows, next);
  expect(kept.map((row) => rows.includes(row))).toEqual([true, false, false]);
  expect(kept.map(({ text, status }) => [text, status])).toEqual([
    ['a', 'reached'],
    [' ', 'reached'],
    ['`', 'reached'],
  ]);
});

test.each([
  ['€', { do: 'char', char: '€' }],
  ['key:F5', { do: 'key', code: 'F5' }],
  ['shortcut:Control+Shift+KeyZ', { do: 'key', code: 'KeyZ', with: ['ControlLeft', 'ShiftLeft'] }],
])('%s on a key is %j', (text, action) => {
  expect(actionOfNeed(needOf(text))).toEqual(action);
});
