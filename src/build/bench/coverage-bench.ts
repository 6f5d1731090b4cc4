import { readFileSync } from 'node:fs';
import { hostFromTable } from '../../core/host/host-from-table.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import { readHostTable } from '../../core/host/host-table.ts';
import { usHost } from '../../core/host/us.ts';
import type { Need } from '../../core/keymap/need.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { languageFile, languageLists, readLanguageTable } from '../../core/needs/language-table.ts';
import { distinctNeeds, type NeedList } from '../../core/needs/need-list.ts';
import { needListNamed } from '../../core/needs/need-lists.ts';
import { createTextCounter } from '../../core/needs/text-counts.ts';
import { findRoutes } from '../../core/routes/find-routes.ts';
import { benchKeymap } from './bench-keymap.ts';
import type { BenchRow } from './bench-row.ts';

/** Languages that share few letters, so that there are many needs. */
const SPOKEN = ['de', 'pl', 'vi'].flatMap((language) => [`cldr:${language}`, `cldr:${language}:letters`]);
const LANGUAGES = [...SPOKEN, 'rust', 'ecmascript'];
const KEYS = ['editing', 'function-keys', 'modifiers', 'media', 'shortcuts'];
const ROUNDS = 21;
const TEXT_CHARACTERS = 10_000_000;
const PIECE = 64 * 1024;

function needsOf(lists: readonly string[]): readonly Need[] {
  return distinctNeeds(lists.flatMap((name) => listOf(name).needs));
}

function listOf(name: string): NeedList {
  const file = languageFile(name);
  if (file === undefined) return found(name, needListNamed(name));
  const table = readLanguageTable(JSON.parse(readFileSync(`public/needs/${file}`, 'utf8')));
  return found(name, table.ok ? languageLists(table.value).find((list) => list.name === name) : undefined);
}

function hostNamed(name: string): HostLayout {
  const table = readHostTable(JSON.parse(readFileSync(`public/hosts/${name}.json`, 'utf8')));
  if (!table.ok) throw new Error(table.problem);
  return hostFromTable(table.value);
}

function found(name: string, list: NeedList | undefined): NeedList {
  if (list === undefined) throw new Error(`There is no need list ${name}.`);
  return list;
}

function median(times: readonly number[]): number {
  return times.toSorted((one, other) => one - other)[Math.floor(times.length / 2)] ?? 0;
}

/** Median ms of a run on something of its own each time, after some runs that do not count. */
function timed<Given>(rounds: number, given: () => Given, run: (on: Given) => unknown): number {
  const times: number[] = [];
  for (let round = -3; round < rounds; round++) {
    const on = given();
    const begin = performance.now();
    run(on);
    if (round >= 0) times.push(performance.now() - begin);
  }
  return median(times);
}

/** Source code and German by turns, so that some lines have letters outside ASCII. */
function benchText(): string {
  const source = readFileSync('src/core/needs/text-counts.ts', 'utf8');
  const prose = 'Zwölf Boxkämpfer jagen Viktor quer über den großen Sylter Deich.\n'.repeat(40);
  const both = `${source}${prose}`;
  return both.repeat(Math.ceil(TEXT_CHARACTERS / both.length)).slice(0, TEXT_CHARACTERS);
}

function countInPieces(text: string): number {
  const counter = createTextCounter();
  for (let at = 0; at < text.length; at += PIECE) counter.add(text.slice(at, at + PIECE));
  return counter.counts().total;
}

/** What the coverage view waits for: the routes of all that several languages ask for, and the counting of a large text. */
export function benchCoverage(): BenchRow[] {
  const document = JSON.stringify(benchKeymap());
  const fresh = (): Keymap => JSON.parse(document);
  const routesOf = (name: string, lists: readonly string[], host: HostLayout, aim: string): BenchRow => {
    const needs = needsOf(lists);
    const median = timed(ROUNDS, fresh, (keymap) => findRoutes(keymap, host, needs));
    const reached = findRoutes(fresh(), host, needs).filter(({ route }) => route !== null).length;
    return {
      name,
      median,
      unit: 'ms',
      note: `42 keys, 8 layers, ${needs.length} needs, ${reached} reached${aim}`,
    };
  };
  const text = benchText();
  const counting = timed(5, () => text, countInPieces);
  return [
    routesOf('all routes, three languages and two programming languages', LANGUAGES, usHost, '; aim: 15 ms'),
    ...['pl', 'de', 'us-mac'].map((name) =>
      routesOf(`the same on ${name}, dead keys included`, LANGUAGES, hostNamed(name), '; aim: 15 ms'),
    ),
    routesOf('on us with keys and shortcuts', [...LANGUAGES, ...KEYS], usHost, ''),
    {
      name: 'counting 10 million characters',
      median: counting,
      unit: 'ms',
      note: `${(new TextEncoder().encode(text).length / 1e6).toFixed(1)} MB of UTF-8; aim: 1,000 ms for 10 MB`,
    },
  ];
}
