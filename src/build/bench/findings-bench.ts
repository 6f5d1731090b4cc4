import { designFacts, factsOf } from '../../core/findings/facts.ts';
import { findAll } from '../../core/findings/find-all.ts';
import type { HostLayout } from '../../core/host/host-layout.ts';
import { usHost } from '../../core/host/us.ts';
import { readKeymap } from '../../core/keymap/read.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { writeKeymap } from '../../core/keymap/write.ts';
import { benchKeymap } from './bench-keymap.ts';
import type { BenchRow } from './bench-row.ts';

const ROUNDS = 61;
const WARM = 40;
const SIZES = [2, 4, 8, 16] as const;

function median(values: readonly number[]): number {
  return values.toSorted((a, b) => a - b)[Math.floor(values.length / 2)] ?? 0;
}

/** Medians in ms of rounds in which every run takes its turn, so that a slow moment of the machine hits all alike. */
function medians(runs: readonly (() => () => unknown)[]): readonly number[] {
  const times = runs.map((): number[] => []);
  for (let round = 0; round < ROUNDS + WARM; round++) {
    for (const [index, prepare] of runs.entries()) {
      const run = prepare();
      const begin = performance.now();
      run();
      if (round >= WARM) times[index]?.push(performance.now() - begin);
    }
  }
  return times.map(median);
}

/** All findings of a design whose routes are known, on a copy that no memory of earlier runs knows. */
function findingsWithoutRoutes(layers: number, host: HostLayout): () => () => unknown {
  const text = JSON.stringify(benchKeymap(layers));
  const withRoutes = factsOf(benchKeymap(layers), host);
  return () => {
    const keymap: Keymap = JSON.parse(text);
    return () => findAll({ ...withRoutes, ...designFacts(keymap, host) });
  };
}

/** Findings with the routes known, beside reading the document; then their growth from 2 to 16 layers. */
export function benchFindings(host: HostLayout = usHost): BenchRow[] {
  const text = writeKeymap(benchKeymap());
  const [read = 0, ...times] = medians([
    () => () => readKeymap(text),
    ...SIZES.map((layers) => findingsWithoutRoutes(layers, host)),
  ]);
  const [least = 1, , main = 0] = times;
  return [
    { name: 'readKeymap', median: read, unit: 'ms' },
    {
      name: 'findings, routes known',
      median: main,
      unit: 'ms',
      ratio: main / read,
      versus: 'readKeymap',
      note: 'aim: 2 ms; 42 keys, 8 layers, 30 chords',
    },
    ...SIZES.map((layers, at) => ({
      name: `findings, routes known, ${layers} layers`,
      median: times[at] ?? 0,
      unit: 'ms',
      ratio: (times[at] ?? 0) / least,
      versus: '2 layers',
    })),
  ];
}
