import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import type { BoardFault } from '../../../src/core/check/board-fault.ts';
import { faultWords } from '../../../src/core/check/fault-words.ts';
import type { HeardStroke } from '../../../src/core/check/heard.ts';
import { cameWords, stepGives, stepMoves, stepName } from '../../../src/core/check/step-words.ts';
import { checkPlan } from '../../../src/core/check/steps.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';

const read = readKeymap(readFileSync('demo-layouts/beacon-log.json', 'utf8'));
if (!read.ok) throw new Error('the demo cannot be read');
const keymap = read.value;
const source = { keymap, host: usHost };
const { steps } = checkPlan(keymap, usHost);

test('a place on a layer: what to hold, what to press, what comes', () => {
  const step = steps.find(({ held, at }) => held.length === 1 && 'place' in at && at.side === 'tap');
  if (step === undefined) throw new Error('no step');
  const moves = stepMoves(source, step);
  expect(moves[0]).toMatch(/^hold (left|right) /);
  expect(moves.at(-1)).toMatch(/^press (left|right) /);
  expect(stepName(source, step)).toMatch(/ on (Moves|Signs|Numbers|Panel)$/);
  expect(stepGives(source, step)).not.toBe('');
});

test('a chord is pressed together', () => {
  const step = steps.find(({ keys }) => keys.length > 1);
  if (step === undefined) throw new Error('no chord');
  expect(stepMoves(source, step).at(-1)).toMatch(/ and .* together$/);
});

const stroke = (code: string): HeardStroke => ({ code, with: [], key: '', timeMs: 0 });
const came = (strokes: readonly HeardStroke[]) =>
  cameWords({ step: '', verdict: 'wrong', strokes, otherCharacters: false, bounces: [], stuck: [] });

test.each([
  [came([]), 'nothing'],
  [came([stroke('Enter')]), 'Enter'],
  [came([stroke('Tab'), stroke('Escape')]), 'Tab, then Escape'],
  [came([{ ...stroke('Tab'), carried: ['AltGraph'] as const }]), 'Tab, with AltGr down from before'],
  [came([stroke('')]), 'a key that the browser does not name'],
  [came(Array.from({ length: 9 }, () => stroke('KeyJ'))), 'J, then J, then J, then J, then J, and 4 more'],
])('what came: %s', (words, expected) => {
  expect(words).toBe(expected);
});

const FAULTS: readonly (readonly [BoardFault, RegExp])[] = [
  [{ fault: 'swapped', keys: ['L22', 'R22'] }, /Left index home and right/],
  [{ fault: 'row-shifted', keys: ['L11', 'L12'], hand: 'left', by: 1 }, /on the right should/],
  [{ fault: 'row-shifted', keys: ['L11', 'L12'], hand: 'left', by: -2 }, /2 places from them on the left/],
  [{ fault: 'half-mirrored', keys: ['L11', 'L12'], hand: 'left' }, /left half is mirrored/],
  [{ fault: 'gives-another', key: 'L11', gives: 'R11' }, /gives what/],
  [
    { fault: 'layer-not-reached', layer: 'moves', by: 'LT2', steps: ['a', 'b'] },
    /Layer Moves.*2 of its keys/,
  ],
  [
    { fault: 'other-host', characters: [{ code: 'KeyY', expected: 'y', came: 'z' }], steps: [] },
    /Y gave z instead of y/,
  ],
  [
    { fault: 'chord-missed', chord: 'save', step: '', apartMs: 71.4, windowMs: 45 },
    /71 ms apart \(window 45 ms\)/,
  ],
  [{ fault: 'tap-for-hold', step: 'x', key: 'L11' }, /came as a tap/],
  [{ fault: 'hold-for-tap', step: 'x', key: 'L11' }, /came as a hold/],
  [{ fault: 'chatters', key: 'L22', code: 'KeyD', gapMs: 11.6, step: '' }, /12 ms after its release/],
  [{ fault: 'stuck', key: 'L22', code: 'KeyD', step: '' }, /no release of D/],
  [
    { fault: 'modifier-down', states: ['AltGraph', 'Shift'], steps: ['a', 'b'] },
    /AltGr and Shift .* 2 presses/,
  ],
  [{ fault: 'dead-key', key: 'L22', steps: [] }, /Nothing came of left index home/],
  [{ fault: 'nothing-came', step: 'x' }, /Nothing came of a place/],
  [{ fault: 'something-else', step: 'x' }, /Something else came of a place: Tab/],
];

test.each(FAULTS)('%j in words, with what to do', (fault, expected) => {
  const { what, todo } = faultWords(keymap, fault, { name: () => 'a place', came: () => 'Tab' });
  expect(what).toMatch(expected);
  expect(todo).toMatch(/\.$/);
});
