import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { countOfRun, type RunCounts } from '../../../src/core/needs/counts-runs.ts';
import { READY_TEXTS, readCountsTable } from '../../../src/core/needs/counts-table.ts';

const file = (name: string) => readFileSync(`public/texts/${name}.json`, 'utf8');
const tableOf = (name: string) => {
  const read = readCountsTable(JSON.parse(file(name)));
  if (!read.ok) throw new Error(read.problem);
  return read.value;
};
/** Norvig's counts out of Google Books, per million; see the file's own note. */
const { pairs, triples }: { pairs: Record<string, number>; triples: Record<string, number> } = JSON.parse(
  readFileSync('tests/core/typist/data/english-shares.json', 'utf8'),
);
const LETTERS = [...'abcdefghijklmnopqrstuvwxyz'];

/** How often letters follow each other, whatever their case, per million of all such runs. */
function sharesOf(counts: RunCounts, length: number): ReadonlyMap<string, number> {
  const shares = new Map<string, number>();
  let total = 0;
  for (const [before, followers] of counts.after) {
    if ([...before].length !== length - 1) continue;
    for (const { char, count } of followers) {
      const run = `${before}${char}`;
      if (!/^[a-z]+$/i.test(run)) continue;
      shares.set(run.toUpperCase(), (shares.get(run.toUpperCase()) ?? 0) + count);
      total += count;
    }
  }
  return new Map([...shares].map(([run, count]) => [run, (count * 1e6) / total]));
}

function correlation(
  reference: Readonly<Record<string, number>>,
  found: ReadonlyMap<string, number>,
): number {
  const runs = Object.entries(reference);
  const xs = runs.map(([, share]) => share);
  const ys = runs.map(([run]) => found.get(run) ?? 0);
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const moment = (one: readonly number[], other: readonly number[]) =>
    mean(one.map((value, at) => value * (other[at] ?? 0))) - mean(one) * mean(other);
  return moment(xs, ys) / Math.sqrt(moment(xs, xs) * moment(ys, ys));
}

describe.each(READY_TEXTS)('%s', (name) => {
  test('comes from 500 kB of text and more, with source and licence, in 60 kB and less', () => {
    const table = tableOf(name);
    expect(table.name).toBe(name);
    expect(table.bytes).toBeGreaterThanOrEqual(500_000);
    expect(table.source.length * table.licence.length).toBeGreaterThan(0);
    expect(gzipSync(file(name), { level: 9 }).length).toBeLessThanOrEqual(60_000);
  });

  test('a run stands there no more often than what it begins with', () => {
    const { counts } = tableOf(name);
    for (const [before, followers] of counts.after) {
      const sum = followers.reduce((all, { count }) => all + count, 0);
      expect(sum).toBeLessThanOrEqual(before === '' ? counts.total : countOfRun(counts, [...before]));
    }
  });
});

test.each([
  ['german', ['ä', 'ö', 'ü', 'ß'], 'sch'],
  ['french', ['é', 'è', 'à', 'ç'], 'ent'],
  ['spanish', ['ñ', 'ó', 'á', 'í'], 'que'],
  ['portuguese', ['ã', 'ç', 'õ', 'é'], 'ção'],
  ['polish', ['ł', 'ą', 'ę', 'ż'], 'nie'],
  ['code', ['(', '_', '=', '.'], 'ret'],
])('%s has the letters and a frequent run of its own', (name, chars, run) => {
  const { counts } = tableOf(name);
  for (const char of chars) expect(countOfRun(counts, [char]) / counts.total).toBeGreaterThan(0.0003);
  expect(countOfRun(counts, [...run]) / counts.total).toBeGreaterThan(0.001);
  // Hardly any English is left in the others: the article makes up 1.2 % of English.
  expect(countOfRun(counts, [...' the']) / counts.total).toBeLessThan(0.002);
});

describe('English beside Norvig 2012 (Google Books)', () => {
  const { counts } = tableOf('english');

  test.each([
    ['TH', 3.56],
    ['HE', 3.07],
    ['IN', 2.43],
    ['ER', 2.05],
    ['AN', 1.99],
    ['RE', 1.85],
  ])('%s makes up about %f %% of letter pairs', (pair, percent) => {
    const share = (sharesOf(counts, 2).get(pair) ?? 0) / 10_000;
    expect(share / percent).toBeGreaterThan(0.65);
    expect(share / percent).toBeLessThan(1.5);
  });

  test.each([
    ['E', 12.49],
    ['T', 9.28],
    ['A', 8.04],
    ['O', 7.64],
    ['I', 7.57],
    ['N', 7.23],
  ])('%s makes up about %f %% of letters', (letter, percent) => {
    const share = (sharesOf(counts, 1).get(letter) ?? 0) / 10_000;
    expect(Math.abs(share / percent - 1)).toBeLessThan(0.1);
  });

  test('pairs and triples go with those of books', () => {
    expect(correlation(pairs, sharesOf(counts, 2))).toBeGreaterThan(0.85);
    expect(correlation(triples, sharesOf(counts, 3))).toBeGreaterThan(0.8);
    expect(LETTERS.every((letter) => countOfRun(counts, [letter]) > 0)).toBe(true);
  });
});
