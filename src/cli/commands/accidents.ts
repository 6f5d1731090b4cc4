import { parseArgs } from 'node:util';
import { keyName } from '../../core/board/key-name.ts';
import type { Keymap } from '../../core/keymap/types.ts';
import { type Accidents, estimateAccidents } from '../../core/typist/accidents.ts';
import type { Rate } from '../../core/typist/interval-of-rate.ts';
import { pressRunsOf } from '../../core/typist/press-runs.ts';
import { type Simulation, simulate } from '../../core/typist/simulate.ts';
import { findCounts } from '../find-counts.ts';
import { openDesign } from '../open-design.ts';
import { answered, type Outcome, refused } from '../outcome.ts';
import { personOf, wholeNumber } from '../person-of.ts';
import { plainTable, shown } from '../plain-table.ts';

const MOST_WORDS = 10_000_000;
const MOST_SEED = 0x7fffffff;
/** Uses of each chord and hold that a simulation makes for their misses. */
const USES_EACH = 400;

/**
 * `accidents FILE [--text NAME_OR_FILE] [--wpm N | --typist FILE] [--simulate WORDS --seed N] [--json] [--host LAYOUT]`: how often typing
 * sets chords and holds off, how often they fail, how long letters wait; in closed form, and simulated where asked.
 */
export function accidentsCommand(args: readonly string[]): Outcome {
  const { values, positionals } = parseArgs({
    args: [...args],
    allowPositionals: true,
    options: {
      text: { type: 'string', default: 'english' },
      wpm: { type: 'string' },
      typist: { type: 'string' },
      simulate: { type: 'string' },
      seed: { type: 'string', default: '1' },
      json: { type: 'boolean', default: false },
      host: { type: 'string' },
    },
  });
  const [file, ...more] = positionals;
  if (file === undefined || more.length > 0) return refused('accidents wants one design.');
  const words = wholeNumber(
    'simulate',
    values.simulate ?? '0',
    values.simulate === undefined ? 0 : 1,
    MOST_WORDS,
  );
  if (!words.ok) return refused(words.problem);
  const seed = wholeNumber('seed', values.seed, 0, MOST_SEED);
  if (!seed.ok) return refused(seed.problem);
  const person = personOf(values);
  if (!person.ok) return refused(person.problem);
  const counts = findCounts(values.text);
  if (!counts.ok) return refused(counts.problem);
  const design = openDesign(file, values.host);
  if (!design.ok) return refused(design.problem);
  const { keymap, host } = design.value;
  const runs = pressRunsOf(keymap, host, counts.value);
  const accidents = estimateAccidents(keymap, runs, person.value);
  const budget = { words: words.value, seed: seed.value, usesEach: USES_EACH };
  const simulation = words.value === 0 ? null : simulate(keymap, runs, counts.value, person.value, budget);
  const output = values.json
    ? JSON.stringify(plainAccidents(accidents, simulation))
    : accidentsText(keymap, accidents, simulation, runs.untypable);
  return answered(output);
}

/** The estimates; `interval` is the simulation's, 95 %, of misfires per 1,000 words, null without one. */
function plainAccidents(accidents: Accidents, simulation: Simulation | null): object {
  const interval = (rate: Rate | undefined) => (rate === undefined ? null : [rate.low, rate.high]);
  const chords = accidents.chords.map(({ id, misfiresPer1000Words, missesPer1000Uses }, at) => ({
    id,
    misfiresPer1000Words,
    missesPer1000Uses,
    interval: interval(simulation?.chords[at]?.misfiresPer1000Words),
  }));
  const holds = accidents.holds.map(({ key, layer, misfiresPer1000Words, missesPer1000Uses }, at) => ({
    key,
    layer,
    misfiresPer1000Words,
    missesPer1000Uses,
    interval: interval(simulation?.holds[at]?.misfiresPer1000Words),
  }));
  const { delay } = accidents;
  return simulation === null ? { chords, holds, delay } : { chords, holds, delay, simulation };
}

function accidentsText(
  keymap: Keymap,
  accidents: Accidents,
  simulation: Simulation | null,
  untypable: number,
): string {
  const ofChords = accidents.chords.map(({ id, misfiresPer1000Words, missesPer1000Uses }, at) => [
    id,
    misfiresPer1000Words === null ? 'simulate' : rateText(misfiresPer1000Words),
    rateText(missesPer1000Uses),
    intervalText(simulation?.chords[at]?.misfiresPer1000Words, misfiresPer1000Words),
  ]);
  const ofHolds = accidents.holds.map(({ key, layer, misfiresPer1000Words, missesPer1000Uses }, at) => [
    `${keyName(keymap.board, key)} on ${layer}`,
    rateText(misfiresPer1000Words),
    rateText(missesPer1000Uses),
    intervalText(simulation?.holds[at]?.misfiresPer1000Words, misfiresPer1000Words),
  ]);
  const ofDelay = accidents.delay.map(({ key, layer, meanMs, p95Ms }) => [
    `${keyName(keymap.board, key)} on ${layer}`,
    String(Math.round(meanMs)),
    String(Math.round(p95Ms)),
  ]);
  const rates = [
    'misfires per 1,000 words',
    'misses per 1,000 uses',
    simulation === null ? '' : 'simulated, 95 %',
  ];
  const parts = [
    shown(keymap.name),
    ...section(['chord', ...rates], ofChords),
    ...section(['hold/tap key', ...rates], ofHolds),
    ...section(['waits before it appears', 'mean ms', '95 % within ms'], ofDelay),
    ...(simulation === null
      ? []
      : [`Simulated: ${simulation.words} words, ${simulation.typists} typists, seed ${simulation.seed}.`]),
    ...(untypable === 0
      ? []
      : [`${(untypable * 100).toFixed(2)} % of the text's characters cannot be typed on this design.`]),
    'Estimates from typing on conventional keyboards; public/typist.md says what is measured and what is assumed.',
  ];
  return parts.join('\n\n');
}

function section(heading: readonly string[], rows: readonly (readonly string[])[]): readonly string[] {
  return rows.length === 0 ? [] : [plainTable([heading, ...rows])];
}

function rateText(rate: number): string {
  return rate >= 10 ? rate.toFixed(0) : rate >= 1 ? rate.toFixed(1) : rate.toFixed(2);
}

function intervalText(rate: Rate | undefined, estimate: number | null): string {
  if (rate === undefined) return '';
  const outside =
    estimate !== null && (estimate < rate.low || estimate > rate.high) ? ', estimate outside' : '';
  return `${rateText(rate.rate)} (${rateText(rate.low)} to ${rateText(rate.high)})${outside}`;
}
