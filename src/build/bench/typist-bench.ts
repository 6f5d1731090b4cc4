import { readFileSync } from 'node:fs';
import { usHost } from '../../core/host/us.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import type { RunCounts } from '../../core/needs/counts-runs.ts';
import { readCountsTable } from '../../core/needs/counts-table.ts';
import { estimateAccidents } from '../../core/typist/accidents.ts';
import { personOfGroup } from '../../core/typist/person.ts';
import { pressRunsOf } from '../../core/typist/press-runs.ts';
import { simulate } from '../../core/typist/simulate.ts';
import { suggestChords, USUAL_WISH } from '../../core/typist/suggest-chords.ts';
import { benchKeymap } from './bench-keymap.ts';
import type { BenchRow } from './bench-row.ts';

const WORDS = 100_000;

function englishCounts(): RunCounts {
  const table = readCountsTable(JSON.parse(readFileSync('public/texts/english.json', 'utf8')));
  if (!table.ok) throw new Error(table.problem);
  return table.value.counts;
}

function medianMs(rounds: number, run: (round: number) => void): number {
  run(0);
  const times = Array.from({ length: rounds }, (_, round) => {
    const begin = performance.now();
    run(round + 1);
    return performance.now() - begin;
  });
  return times.toSorted((one, other) => one - other)[rounds >> 1] ?? 0;
}

/** A design as it is while a window's slider moves: every chord with another window each time. */
function slid(keymap: Keymap, round: number): Keymap {
  return {
    ...keymap,
    chords: keymap.chords?.map((chord) => ({ ...chord, windowMs: 30 + (round % 40) })) ?? [],
  };
}

/** Accidents of the design of 42 keys, 8 layers and 30 chords with the English text. Takes some ten seconds. */
export function benchTypist(): BenchRow[] {
  const counts = englishCounts();
  const keymap = benchKeymap();
  const person = personOfGroup('fast');
  const runs = pressRunsOf(keymap, usHost, counts);
  const wish = { ...USUAL_WISH, layers: keymap.layers.slice(0, 1).map(({ id }) => id) };
  let considered = 0;
  const text = medianMs(15, () => pressRunsOf(keymap, usHost, counts));
  const closed = medianMs(41, (round) => estimateAccidents(slid(keymap, round), runs, person));
  const first = medianMs(9, () => estimateAccidents(keymap, runs, personOfGroup('fast')));
  const ranking = medianMs(5, () => {
    considered = suggestChords(keymap, runs, person, wish).considered;
  });
  const simulated = medianMs(5, (seed) =>
    simulate(keymap, runs, counts, person, { words: WORDS, seed, usesEach: 0 }),
  );
  const unit = 'ms';
  return [
    { name: 'text counts onto the keys, routes included', median: text, unit },
    { name: 'all accidents, closed form', median: closed, unit, note: 'aim: 20; windows change each time' },
    { name: 'the same for typists not met before', median: first, unit },
    { name: 'ranking all sets of 2 to 4 keys', median: ranking, unit, note: `aim: 1000; ${considered} sets` },
    { name: 'simulating 100,000 words', median: simulated, unit, note: 'aim: 1500' },
  ];
}
