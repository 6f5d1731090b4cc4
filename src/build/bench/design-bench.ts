import { readFileSync } from 'node:fs';
import { factsOf } from '../../core/findings/facts.ts';
import { findAll } from '../../core/findings/find-all.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import { usHost } from '../../core/host/us.ts';
import type { Need } from '../../core/keymap/need.ts';
import { readKeymap } from '../../core/keymap/read.ts';
import { keymapSchema } from '../../core/keymap/schema.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { writeKeymap } from '../../core/keymap/write.ts';
import { languageLists, readLanguageTable } from '../../core/needs/language-table.ts';
import { distinctNeeds } from '../../core/needs/need-list.ts';
import { needListNamed } from '../../core/needs/need-lists.ts';
import { findRoutes } from '../../core/routes/find-routes.ts';
import { benchKeymap } from './bench-keymap.ts';
import type { BenchRow } from './bench-row.ts';

const ROUNDS = 41;
const WARM = 20;
const NEEDS = 150;
const LISTS = ['ascii', 'editing', 'function-keys', 'media', 'modifiers', 'shortcuts'];

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** Medians in ms of rounds in which every run takes its turn, so that a slow moment of the machine hits all alike. */
function medians(runs: readonly (() => unknown)[]): number[] {
  for (const run of runs) for (let warm = 0; warm < WARM; warm++) run();
  const times = runs.map((): number[] => []);
  for (let round = 0; round < ROUNDS; round++) {
    for (const [index, run] of runs.entries()) {
      const begin = performance.now();
      run();
      times[index]?.push(performance.now() - begin);
    }
  }
  return times.map(median);
}

function benchNeeds(): readonly Need[] {
  return distinctNeeds(LISTS.flatMap((name) => needListNamed(name)?.needs ?? [])).slice(0, NEEDS);
}

/** A copy that no memory of earlier runs knows, so that every run starts from scratch. */
function fresh(keymap: Keymap): () => Keymap {
  const text = JSON.stringify(keymap);
  const copies = Array.from({ length: ROUNDS + WARM }, () => JSON.parse(text) as Keymap);
  return () => copies.pop() ?? (JSON.parse(text) as Keymap);
}

/** Findings and all routes from scratch, beside the cost of merely reading the same document with zod; then by layers. */
export function benchDesign(host: HostLayout = usHost): BenchRow[] {
  const keymap = benchKeymap();
  const needs = benchNeeds();
  const text = writeKeymap(keymap);
  const json: unknown = JSON.parse(text);
  const [forAll, forRoutes] = [fresh(keymap), fresh(keymap)];
  const [shape = 0, read = 0, routes = 0, all = 0] = medians([
    () => keymapSchema.parse(json),
    () => readKeymap(text),
    () => findRoutes(forRoutes(), host, needs),
    () => findAll(factsOf(forAll(), host, needs)),
  ]);
  const against = (value: number) => ({
    median: value,
    unit: 'ms',
    ratio: value / shape,
    versus: 'zod alone',
  });
  const what = `${keymap.board.keys.length} keys, ${keymap.layers.length} layers, ${needs.length} needs`;
  return [
    { name: 'the document through its zod schema', median: shape, unit: 'ms' },
    { name: 'readKeymap: JSON, schema, references', ...against(read) },
    { name: 'all routes', ...against(routes) },
    { name: 'findings and all routes', ...against(all), note: `${what}; aim: 8 ms` },
    ...byLayers(host, needs),
    ...byLanguages(host),
  ];
}

/** About 350 needs: what three languages and two programming languages ask for, on a host where most can be typed. */
function languageNeeds(): readonly Need[] {
  const spoken = ['de', 'pl', 'pt'].flatMap((language) => {
    const file = new URL(`../../../public/needs/cldr-${language}.json`, import.meta.url);
    const table = readLanguageTable(JSON.parse(readFileSync(file, 'utf8')));
    return table.ok ? languageLists(table.value).flatMap((list) => list.needs) : [];
  });
  const programming = ['ecmascript', 'rust'].flatMap((name) => needListNamed(name)?.needs ?? []);
  return distinctNeeds([...spoken, ...programming]);
}

function byLanguages(host: HostLayout): BenchRow[] {
  const needs = languageNeeds();
  const next = fresh(benchKeymap());
  const [all = 0] = medians([() => findAll(factsOf(next(), host, needs))]);
  const note = `${needs.length} needs; aim: 15 ms for about 350`;
  return [{ name: 'needs of three languages and two programming languages', median: all, unit: 'ms', note }];
}

function byLayers(host: HostLayout, needs: readonly Need[]): BenchRow[] {
  const sizes = [2, 4, 8, 16];
  const runs = sizes.map((layers) => {
    const next = fresh(benchKeymap(layers));
    return () => findAll(factsOf(next(), host, needs));
  });
  const times = medians(runs);
  const [least = 1] = times;
  return sizes.map((layers, at) => ({
    name: `findings and all routes, ${layers} layers`,
    median: times[at] ?? 0,
    unit: 'ms',
    ratio: (times[at] ?? 0) / least,
    versus: '2 layers',
  }));
}
