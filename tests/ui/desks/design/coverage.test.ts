import { describe, expect, test } from 'vitest';
import { usHost } from '../../../../src/core/host/us.ts';
import type { Keymap } from '../../../../src/core/keymap/types.ts';
import { runsOfPairs } from '../../../../src/core/needs/counts-runs.ts';
import { needsOfKeymap } from '../../../../src/core/needs/needs-of.ts';
import { createTextCounter } from '../../../../src/core/needs/text-counts.ts';
import { needsOfText } from '../../../../src/core/needs/text-needs.ts';
import { findRoutes } from '../../../../src/core/routes/find-routes.ts';
import { coverageReport } from '../../../../src/ui/desks/design/coverage/coverage-report.ts';
import {
  barWords,
  costlyWords,
  loadRows,
  percent,
  standingWords,
  stretchesOf,
} from '../../../../src/ui/desks/design/coverage/coverage-words.ts';
import {
  countingShare,
  countingWords,
  textWords,
} from '../../../../src/ui/desks/design/coverage/own-text-words.ts';
import { needSources } from '../../../../src/ui/desks/design/needs/need-sources.ts';
import { sample } from '../../../store/sample.ts';

/** Types a and b with one press and ! inside a hold, which one finger cannot do well; the rest is missing. */
const keymap: Keymap = {
  ...sample,
  needs: { lists: ['editing'], own: ['a', 'b', '!', 'ü', 'shortcut:Control+KeyA'], waived: [] },
};

function reportOn(text: string | null) {
  const needs = findRoutes(keymap, usHost, needsOfKeymap(keymap));
  const sources = needSources(keymap);
  if (text === null) return coverageReport(keymap, needs, sources, null);
  const counter = createTextCounter();
  counter.add(text);
  const counts = counter.counts();
  return coverageReport(keymap, needs, sources, {
    counts,
    needs: findRoutes(keymap, usHost, needsOfText(counts)),
  });
}

describe('the coverage of a design', () => {
  test('without a text: lists by their needs, the dearest routes, no load', () => {
    const { lists, weighted, load, costliest, shortcuts } = reportOn(null);
    expect(lists.map(({ name }) => name)).toEqual(['own', 'editing']);
    const [own] = lists;
    expect(own?.missingNeeds).toEqual(['ü', 'shortcut:Control+KeyA']);
    expect([weighted, load]).toEqual([null, null]);
    expect(costliest[0]?.need).toEqual({ kind: 'char', char: '!' });
    expect(shortcuts.map(({ route }) => route)).toEqual([null]);
  });

  test('with a text: the text is the last list, and every list is weighed by it', () => {
    const { lists, weighted, load, costliest } = reportOn('aab!?');
    expect(lists.at(-1)).toMatchObject({ name: 'own text', total: 4, missing: 1, missingNeeds: ['?'] });
    expect(weighted?.at(-1)).toMatchObject({ total: 5, reached: 4, missing: 1 });
    expect(weighted?.[0]).toMatchObject({ total: 4, classes: { 'one press': 3, 'one hold': 1 } });
    expect(load).toMatchObject({ typed: 4, total: 5, pressesPerChar: 5 / 4 });
    expect(costliest.map(({ need, extraPresses }) => [need, extraPresses])).toEqual([
      [{ kind: 'char', char: '!' }, 1],
    ]);
  });
});

describe('the figures in words', () => {
  const { lists, weighted, load, costliest } = reportOn('aab!?');

  test('a list by needs, and by characters', () => {
    const [own] = lists;
    const text = weighted?.at(-1);
    if (own === undefined || text === undefined) throw new Error('There are lists.');
    expect(standingWords(own, 'needs')).toBe('3 of 5 reached, 1 of them clumsy, 2 missing');
    expect(standingWords(text, 'characters')).toBe(
      '80.0 % of 5 characters reached, 1 of them clumsy, 1 missing',
    );
    expect(standingWords({ ...text, total: 0 }, 'characters')).toBe('Nothing of it stands in your text.');
    expect(barWords(text)).toBe('one press: 3, one hold: 1, missing: 1');
    expect(stretchesOf(text).reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1);
  });

  test('what costs most, with and without a text', () => {
    const [first] = costliest;
    if (first === undefined) throw new Error('There is one.');
    expect(costlyWords(first, false)).toBe('2 presses, 1 held, waits 200 ms');
    expect(costlyWords({ ...first, count: 1200, extraPresses: 1200 }, true)).toBe(
      '2 presses, 1 held, waits 200 ms; 1,200 times: 1,200 presses beyond one each',
    );
  });

  test('the load', () => {
    expect(load === null ? [] : loadRows(load).map(([, figure]) => figure)).toEqual([
      '1.25',
      '0.25',
      '80.0 %',
      expect.stringMatching(/ %$/),
    ]);
  });

  test.each([
    [0, '0 %'],
    [0.0002, '< 0.1 %'],
    [0.12345, '12.3 %'],
    [1, '100.0 %'],
  ])('%d is %s', (share, words) => expect(percent(share)).toBe(words));
});

describe('the own text in words', () => {
  test('its name, size and day', () => {
    const counts = { total: 12_345, chars: new Map(), pairs: new Map() };
    const text = {
      name: 'letters',
      countedAt: Date.UTC(2026, 4, 7, 12),
      files: 1,
      counts,
      runs: runsOfPairs(counts),
      notes: [],
    };
    expect(textWords(text, 'en-GB')).toBe('letters: 12,345 characters in one file, counted on 7 May 2026');
  });

  test('how far the counting has come, by bytes', () => {
    const counting = { state: 'counting', done: { files: 3, bytes: 50 }, files: 4, bytes: 200 } as const;
    expect(countingWords(counting)).toBe('Counting: 3 of 4 files');
    expect(countingShare(counting)).toBe(0.25);
    expect(countingShare({ ...counting, bytes: 0 })).toBe(1);
    expect(countingShare({ state: 'gathering' })).toBeNull();
  });
});
