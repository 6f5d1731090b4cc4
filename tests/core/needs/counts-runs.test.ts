import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import {
  countOfRun,
  createRunCounter,
  LONGEST_RUN,
  type RunCounts,
  runsOfPairs,
  withoutRareRuns,
} from '../../../src/core/needs/counts-runs.ts';
import { readCountsTable, writeCountsTable } from '../../../src/core/needs/counts-table.ts';
import { createTextCounter } from '../../../src/core/needs/text-counts.ts';

function countsOf(...pieces: readonly string[]): RunCounts {
  const counter = createRunCounter();
  for (const piece of pieces) counter.add(piece);
  return counter.counts();
}

const plain = fc.string({ unit: fc.constantFrom('a', 'b', 'c', 'ł', '😀', ' ', '\n'), maxLength: 40 });

describe('runs of a text of which only characters and pairs are known', () => {
  property.prop([plain])('are its runs of one and two', (text) => {
    const counter = createTextCounter();
    counter.add(text);
    const pairs = runsOfPairs(counter.counts());
    const all = countsOf(text);
    expect(pairs.total).toBe(all.total);
    const known = [...all.after].filter(([before]) => [...before].length < 2);
    expect(pairs.after).toEqual(new Map(known));
  });

  test('a cluster of several code points is in none', () => {
    const counter = createTextCounter();
    counter.add('a🇵🇱b');
    expect([...runsOfPairs(counter.counts()).after.keys()]).toEqual(['']);
  });
});

describe('runs', () => {
  test.each([
    ['a', 3],
    ['ab', 2],
    ['aba', 1],
    ['abar', 0],
    ['bra', 1],
    ['abra', 1],
    ['abab', 1],
  ])('%s stands in "ababra" %i times', (run, times) => {
    expect(countOfRun(countsOf('aba', 'bra'), [...run])).toBe(times);
  });

  property.prop([plain, fc.nat(40)])('a seam between two pieces changes nothing', (text, at) => {
    const chars = [...text];
    expect(countsOf(chars.slice(0, at).join(''), chars.slice(at).join(''))).toEqual(countsOf(text));
  });

  property.prop([plain])('every run is counted as often as it can be found', (text) => {
    const chars = [...text];
    const counts = countsOf(text);
    expect(counts.total).toBe(chars.length);
    for (let at = 0; at < chars.length; at++)
      for (let length = 1; length <= LONGEST_RUN && at + length <= chars.length; length++) {
        const run = chars.slice(at, at + length);
        const found = chars.filter((_, from) =>
          run.every((char, next) => chars[from + next] === char),
        ).length;
        expect(countOfRun(counts, run)).toBe(found);
      }
  });

  test('a cluster of several code points ends a run, as the end of a text does', () => {
    const counts = countsOf('ae\u0304\u0331b');
    expect([countOfRun(counts, ['a']), countOfRun(counts, ['b'])]).toEqual([1, 1]);
    expect(countOfRun(counts, ['a', 'b'])).toBe(0);
    const counter = createRunCounter();
    counter.add('a');
    counter.endText();
    counter.add('b');
    expect(countOfRun(counter.counts(), ['a', 'b'])).toBe(0);
  });

  property.prop([plain, fc.integer({ min: 1, max: 4 })])(
    'without its rare runs a table keeps the counts of what is left, and letters and pairs altogether',
    (text, floor) => {
      const counts = countsOf(text);
      const light = withoutRareRuns(counts, { triple: floor, quadruple: floor });
      for (const [before, followers] of light.after)
        for (const { char, count } of followers) {
          expect(countOfRun(counts, [...before, char])).toBe(count);
          if ([...before].length > 1) expect(count).toBeGreaterThanOrEqual(floor);
        }
      for (const [before, followers] of counts.after)
        if ([...before].length < 2) expect(light.after.get(before)).toEqual(followers);
    },
  );
});

describe('tables', () => {
  const about = { name: 'own', title: 'Own', source: 'made up', licence: 'none', bytes: 8 };

  property.prop([plain.filter((text) => text !== '')])('what is written is read back equal', (text) => {
    const table = { ...about, counts: countsOf(text) };
    expect(readCountsTable(JSON.parse(writeCountsTable(table)))).toEqual({ ok: true, value: table });
  });

  test.each([
    [{ ...about, total: 2, rows: [['', 'ab', [1]]] }, 'as many counts'],
    [{ ...about, total: 2, rows: [['', 'a', [0.5]]] }, 'rows.0.2.0'],
    [null, 'not a table'],
  ])('%j is refused', (value, phrase) => {
    expect(readCountsTable(value)).toMatchObject({ ok: false, problem: expect.stringContaining(phrase) });
  });
});
