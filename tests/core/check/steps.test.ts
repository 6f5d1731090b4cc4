import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { judge } from '../../../src/core/check/judge.ts';
import { type CheckStep, checkPlan } from '../../../src/core/check/steps.ts';
import { travelMm, walkOf } from '../../../src/core/check/walk.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { actionsOf } from '../../../src/core/keymap/actions-of.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import type { Action } from '../../../src/core/keymap/types.ts';
import { keymapArbitrary } from '../arbitraries/keymap-arbitrary.ts';
import { chord, layer, small, toLayer } from '../keymap/small.ts';
import { isForHands } from '../routes/for-hands.ts';
import { hear } from './faulty-board.ts';

const key = (
  code: 'KeyA' | 'KeyB' | 'Tab' | 'Power' | 'AudioVolumeUp' | 'KeyW' | 'KeyL',
  ...around: ('ControlLeft' | 'MetaLeft')[]
): Action => ({ do: 'key', code, with: around });

function stepOf(action: Action): CheckStep {
  const [step] = checkPlan(small([layer('base', { k1: { tap: action } })]), usHost).steps;
  if (step === undefined) throw new Error('no step');
  return step;
}

test.each<[string, Action, string, string]>([
  ['a letter', key('KeyA'), 'KeyA a', 'seen'],
  ['a shifted character', { do: 'char', char: 'A' }, 'ShiftLeft+KeyA A', 'seen'],
  ['a shortcut of the program', key('KeyA', 'ControlLeft'), 'ControlLeft+KeyA null', 'seen'],
  [
    'a shortcut that closes the page',
    key('KeyW', 'ControlLeft'),
    'ControlLeft+KeyW null',
    'seen-when-locked',
  ],
  ['a shortcut that locks the screen', key('KeyL', 'MetaLeft'), 'MetaLeft+KeyL null', 'by-eye'],
  ['the power key', key('Power'), 'Power null', 'by-eye'],
  ['volume', key('AudioVolumeUp'), 'AudioVolumeUp null', 'by-eye'],
  ['a modifier by itself', { do: 'key', code: 'ControlLeft' }, 'ControlLeft null', 'seen'],
  ['what the board does itself', { do: 'board', label: 'brighter' }, '', 'by-eye'],
  ['a latch', { do: 'modifier', code: 'ShiftLeft', mode: 'latch' }, '', 'by-its-effect'],
])('%s: what is expected, and whether a browser sees it', (_, action, strokes, sight) => {
  const step = stepOf(action);
  const told = step.expects.map(
    ({ code, with: around, key: name }) => `${[...around, code].join('+')} ${name}`,
  );
  expect(told.join(' ')).toBe(strokes);
  expect(step.sight.kind).toBe(sight);
});

describe('what there is to press', () => {
  const keymap = small(
    [
      layer('base', { k1: { tap: key('KeyA') }, k2: { hold: toLayer('sym') } }),
      layer('sym', { k1: { tap: key('KeyB') }, k3: { tap: { do: 'nothing' } } }),
      layer('lost', { k1: { tap: key('Tab') } }),
    ],
    [chord('c1', ['k3', 'k4'])],
  );
  const { steps, unreached } = checkPlan(keymap, usHost);

  test('places and chords, with the keys that are held for them; blanks are left out', () => {
    expect(steps.map(({ id, keys, held }) => [id, keys.join('+'), held.join('+')])).toEqual([
      ['base k1 tap', 'k1', ''],
      ['base k2 hold', 'k2', ''],
      ['sym k1 tap', 'k1', 'k2'],
      ['c1 tap', 'k3+k4', ''],
    ]);
  });

  test('what the design gives no way to is told apart from what the board may have wrong', () => {
    expect(unreached).toMatchObject([{ id: 'lost k1 tap' }]);
  });
});

test('on any design: every action but blanks is a step or unreached, and a right board is right at each', () => {
  fc.assert(
    fc.property(keymapArbitrary({ maxChords: 2 }).filter(isForHands), (keymap) => {
      const { steps, unreached } = checkPlan(keymap, usHost);
      const bound = actionsOf(keymap).filter(({ action }) => action.do !== 'nothing');
      expect(steps.length + unreached.length).toBe(bound.length);
      for (const step of steps) {
        if (step.expects.length === 0) continue;
        expect(judge(step, hear(keymap, usHost, step)).verdict, step.id).toBe('right');
      }
    }),
    { numRuns: 60, seed: 7 },
  );
});

test('the walk is all of it, and never farther than the order of the document within the same keys held', () => {
  const read = readKeymap(readFileSync('demo-layouts/two-shore-almanac.json', 'utf8'));
  if (!read.ok) throw new Error(read.problem[0]?.sentence);
  const { steps } = checkPlan(read.value, usHost);
  const walk = walkOf(read.value, steps);
  expect([...walk].map(({ id }) => id).sort()).toEqual(steps.map(({ id }) => id).sort());
  expect(travelMm(read.value.board, walk)).toBeLessThan(travelMm(read.value.board, steps) * 0.85);
  const helds = walk.map(({ held }) => [...held].sort().join('+'));
  const changes = helds.filter((held, at) => at > 0 && held !== helds[at - 1]).length;
  expect(changes).toBeLessThanOrEqual(2 * new Set(helds).size);
});
