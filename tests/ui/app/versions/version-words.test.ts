import { describe, expect, test } from 'vitest';
import type { ChangeRow } from '../../../../src/core/versions/change-rows.ts';
import { compareKeymaps } from '../../../../src/core/versions/compare.ts';
import { layerOptions, marksOf, marksWords } from '../../../../src/ui/app/versions/compared-layers.ts';
import {
  accidentLines,
  countWords,
  figureRows,
  needsText,
  noneWords,
  relearningWords,
  rowGroups,
  versionTitle,
} from '../../../../src/ui/app/versions/version-words.ts';
import { layer, small } from '../../../core/keymap/small.ts';

const row = (part: ChangeRow['part'], keys: string[], on: string | null = null): ChangeRow => ({
  part,
  where: '',
  what: 'a became b',
  keys,
  layer: on,
  chord: null,
});
const rows = [
  row('design', []),
  row('board', ['k5']),
  row('key', ['k1'], 'base'),
  row('key', ['k2'], 'sym'),
  row('chord', ['k3', 'k4']),
];

test('a version goes by its name, else by when it was kept', () => {
  const version = { id: 'v', keptAt: 0, keymap: small() };
  expect(versionTitle({ ...version, name: 'Before' }, 0)).toBe('Before');
  expect(versionTitle({ ...version, name: null }, 5 * 60_000)).toBe('By itself, 5 minutes ago');
});

test('where there is nothing to compare, it says why', () => {
  expect(noneWords(false, null)).toMatch(/^Looking/);
  expect(noneWords(true, null)).toMatch(/no version of this design yet/);
  expect(noneWords(true, 'the disk is gone')).toContain('the disk is gone');
});

describe('relearning', () => {
  const learnt = (percent: number, chars: string) => ({
    percent,
    presses: 1000,
    changed: 1,
    characters: [...chars].map((char) => ({ char, count: 1, presses: 1, changed: 1 })),
    untypable: 0,
  });

  test.each([
    [learnt(0, ''), 'Nothing changes under the fingers in it.'],
    [learnt(0.02, 'a'), 'less than 0.1 % of the presses of it change under the fingers, most of them in a'],
    [learnt(4.25, ' e'), '4.3 % of the presses of it change under the fingers, most of them in space e'],
    [
      learnt(62.4, '\nabcdefghijkl'),
      '62 % of the presses of it change under the fingers, most of them in Enter a b c d e f g h i',
    ],
  ])('%#', (relearning, words) => {
    expect(relearningWords(relearning, 'it')).toBe(words);
  });
});

test('figures say which side is better, and call no difference what nobody could read', () => {
  const standing = (reached: number, clumsy: number) => ({ asked: 100, reached, clumsy });
  const sums = (misfires: number, delay: number) => ({
    misfiresPer1000Words: misfires,
    worstMissesPer1000Uses: 40,
    meanDelayMs: delay,
  });
  const typing = {
    needs: { before: standing(90, 3), after: standing(95, 4), gained: [], lost: [], cheaper: [], dearer: [] },
    accidents: { before: sums(12.41, 30), after: sums(12.44, 12.3), changes: [] },
    relearning: { percent: 0, presses: 0, changed: 0, characters: [], untypable: 0 },
  };
  expect(figureRows(typing).map(({ before, after, change }) => [before, after, change])).toEqual([
    ['90 of 100', '95 of 100', 'better'],
    ['3', '4', 'worse'],
    ['12', '12', 'same'],
    ['40', '40', 'same'],
    ['30 ms', '12 ms', 'better'],
  ]);
});

test('differences stand under headings and are counted', () => {
  expect(rowGroups(rows).map(({ title, rows: group }) => [title, group.length])).toEqual([
    ['The design', 1],
    ['Keys of the board', 1],
    ['What keys do', 2],
    ['Chords', 1],
  ]);
  expect([countWords([]), countWords(rows.slice(0, 1)), countWords(rows)]).toEqual([
    'Nothing differs.',
    '1 difference',
    '5 differences',
  ]);
});

test('marks: what differs on the layer in front and on the board itself, or only what is looked at', () => {
  expect([...marksOf(rows, 'sym', null)]).toEqual(['k5', 'k2']);
  expect([...marksOf(rows, 'sym', rows[4] ?? null)]).toEqual(['k3', 'k4']);
  expect([0, 1, 2].map(marksWords)).toEqual([
    'no key differs on this layer',
    '1 key marked',
    '2 keys marked',
  ]);
});

test('layers to choose: those of both designs, with what differs on each', () => {
  const before = small([layer('base'), layer('old')]);
  const after = small([layer('base'), layer('sym')]);
  expect(layerOptions(compareKeymaps(before, after), rows).map(({ label }) => label)).toEqual([
    'Base · 1',
    'SYM · 1',
    'OLD',
  ]);
});

test('many needs are named as far as they can be read', () => {
  const needs = [...'abcdefghijklmnopqrstuvwxyz'].map((char) => ({ kind: 'char', char }) as const);
  expect(needsText(needs)).toMatch(/^a {2}b {2}.*x and 2 more$/);
});

test('accidents that changed: the first few of those that became worse, and of those that became better', () => {
  const change = (who: string, before: number, after: number) =>
    ({ who, keys: [], rate: 'misfires', before, after }) as const;
  const worse = ['a', 'b', 'c', 'd', 'e', 'f'].map((who) => change(who, 1, 2));
  expect(
    accidentLines([...worse, change('g', 12, 0.3)]).map(({ lines, more }) => [lines.length, more]),
  ).toEqual([
    [5, 1],
    [1, 0],
  ]);
  expect(accidentLines([change('g', 12, 0.3)])[0]?.lines[0]?.what).toContain('12 → 0.3');
  expect(accidentLines([])).toEqual([]);
});
