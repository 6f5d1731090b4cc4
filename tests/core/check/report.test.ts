import { expect, test } from 'vitest';
import type { EyeVerdict } from '../../../src/core/check/judge.ts';
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

const TIMES = { begunAt: '2031-04-05T06:07:08Z', lastAt: '2031-04-06T17:18:19Z' };

function reportOf(faults: Faults, some = plan.steps.length, byEye: readonly [string, EyeVerdict][] = []) {
  const results = walked(keymap, usHost, plan.steps.slice(0, some), faults).map(
    ({ step, result }) => [step.id, result] as const,
  );
  const record = { ...TIMES, results: new Map(results), byEye: new Map(byEye) };
  return checkReport(keymap, usHost, plan, record, new Set(['seen']));
}

test('a right board: counts, no fault, what is left for the eye', () => {
  const report = reportOf({});
  expect(report.counts).toEqual({
    right: 3,
    wrong: 0,
    silent: 0,
    notPressed: 0,
    unreached: 0,
    byEye: { right: 0, wrong: 0, notLookedAt: 1 },
  });
  expect(report.faults).toEqual([]);
  expect(report.byEye).toMatchObject([{ verdict: 'not looked at' }]);
});

test.each<[EyeVerdict, readonly string[]]>([
  ['right', []],
  ['wrong', ['wrong-by-eye']],
])('what was found %s by eye is told', (verdict, kinds) => {
  const report = reportOf({}, undefined, [['base k3 tap', verdict]]);
  expect(report.counts.byEye).toEqual({ right: 0, wrong: 0, notLookedAt: 0, [verdict]: 1 });
  expect(report.byEye).toMatchObject([{ verdict }]);
  expect(report.faults.map(({ kind }) => kind)).toEqual(kinds);
  expect(reportMarkdown(report)).toMatch(new RegExp(`brighter.* \\| ${verdict} \\|`));
});

test('when it was begun and when something was last taken down', () => {
  expect(reportOf({})).toMatchObject(TIMES);
  expect(reportMarkdown(reportOf({}))).toContain(
    'Begun 2031-04-05 06:07 UTC, last result 2031-04-06 17:18 UTC',
  );
});

test('what the design gives no way to is told by its name and not by its id', () => {
  const layers = [...keymap.layers, { ...layer('lost', { k2: { tap: A } }), name: 'Far side' }];
  const far = { ...keymap, layers };
  const record = { ...TIMES, results: new Map(), byEye: new Map() };
  const report = checkReport(far, usHost, checkPlan(far, usHost), record, new Set(['seen']));
  expect(report.unreached).toEqual([{ what: expect.stringMatching(/ on Far side$/), expected: 'A' }]);
  expect(reportMarkdown(report)).toMatch(/## No way to it in the design\n\n- .* on Far side: A/);
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
  const record = { ...TIMES, results: new Map(results), byEye: new Map() };
  const told = checkReport(closing, usHost, { steps, unreached }, record, new Set(['seen']));
  expect(told.counts).toMatchObject({ right: 1, notPressed: 0 });
  expect(told.byEye).toEqual([]);
});

test('as Markdown, with nothing of the design read as markup', () => {
  const markdown = reportMarkdown(reportOf({ dead: ['k2'] }));
  expect(markdown).toContain('# Check of Salt \\*and\\* sand');
  expect(markdown).toContain('Pressed: 2 right, 0 wrong, 1 silent');
  expect(markdown).toMatch(/## What is likely wrong\n\n- Nothing came of /);
  expect(markdown).toMatch(/## Checked by eye\n\n[^#]*brighter/);
});
