import { expect, test } from 'vitest';
import { checkReport } from '../../../src/core/check/report.ts';
import { reportMarkdown } from '../../../src/core/check/report-markdown.ts';
import { checkPlan } from '../../../src/core/check/steps.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { A, B, chord, layer, small } from '../keymap/small.ts';
import { type Faults, walked } from './faulty-board.ts';

const keymap: Keymap = {
  ...small(
    [layer('base', { k1: { tap: A }, k2: { tap: B }, k3: { tap: { do: 'board', label: 'brighter' } } })],
    [chord('c1', ['k1', 'k4'])],
  ),
  name: 'Salt *and* sand',
};
const plan = checkPlan(keymap, usHost);

function reportOf(faults: Faults, some = plan.steps.length) {
  const results = walked(keymap, usHost, plan.steps.slice(0, some), faults).map(
    ({ step, result }) => [step.id, result] as const,
  );
  return checkReport(keymap, usHost, plan, new Map(results), '2031-04-05T06:07:08Z', new Set(['seen']));
}

test('a right board: counts, no fault, what is left for the eye', () => {
  const report = reportOf({});
  expect(report.counts).toEqual({ right: 3, wrong: 0, silent: 0, notPressed: 0, byEye: 1, unreached: 0 });
  expect(report.faults).toEqual([]);
  expect(report.byEye).toHaveLength(1);
});

test('two keys swapped and a chord that is too slow are both told, each with what to do', () => {
  const report = reportOf({ wiredAs: { k1: 'k2', k2: 'k1' }, chordSpreadMs: 90 });
  expect(report.faults.map(({ kind }) => kind)).toEqual(expect.arrayContaining(['swapped']));
  for (const { what, todo } of report.faults)
    expect([what, todo].every((words) => words.length > 10)).toBe(true);
});

test('a check that was stopped says what was not pressed', () => {
  expect(reportOf({}, 1).counts).toMatchObject({ right: 1, notPressed: 2 });
});

test('what was pressed under the keyboard lock stays pressed when the lock is over', () => {
  const closing: Keymap = {
    ...keymap,
    layers: [layer('base', { k1: { tap: { do: 'key', code: 'KeyW', with: ['ControlLeft'] } } })],
    chords: [],
  };
  const { steps, unreached } = checkPlan(closing, usHost);
  const results = walked(closing, usHost, steps).map(({ step, result }) => [step.id, result] as const);
  const told = checkReport(closing, usHost, { steps, unreached }, new Map(results), '', new Set(['seen']));
  expect(told.counts).toMatchObject({ right: 1, notPressed: 0, byEye: 0 });
});

test('as Markdown, with nothing of the design read as markup', () => {
  const markdown = reportMarkdown(reportOf({ dead: ['k2'] }));
  expect(markdown).toContain('# Check of Salt \\*and\\* sand');
  expect(markdown).toContain('2031-04-05T06:07:08Z: 2 right, 0 wrong, 1 silent');
  expect(markdown).toMatch(/## What is likely wrong\n\n- Nothing came of /);
  expect(markdown).toMatch(/## To check by eye\n\n- .*brighter/);
});
