import { keyName } from '../../../../core/board/key-name.ts';
import type { LetterProtections } from '../../../../core/findings/letter-protections.ts';
import { actionInWords, type LegendSource } from '../../../../core/host/legend.ts';
import { bindingOn } from '../../../../core/keymap/lookup.ts';
import { chordsOf } from '../../../../core/keymap/timing.ts';
import type { Place } from '../../../../core/keymap/types.ts';
import type { Offence, Offender, Overview } from '../../../../core/typist/overview.ts';
import type { ProtectedHold, Protections } from '../../../../core/typist/protections.ts';
import { plainNumber, rangeInWords, rateInWords } from '../../../../core/typist/uncertainty.ts';
import type { Lit, OpenCard } from '../../../../store/bench-state.ts';
import { missesInWords, RULE_WORDS, runInWords } from '../../../board/accident-words.ts';

/** One thing that goes off, as the list shows it. */
export interface AccidentRow {
  readonly id: string;
  readonly name: string;
  readonly figures: string;
  /** What of the text does it, in words; empty where nothing stands out. */
  readonly at: string;
  /** Its misfires as a share of the worst one's, 0 to 1: the length of its bar. */
  readonly share: number;
  readonly lit: Lit;
  readonly card: OpenCard;
}

/** Misfires under this rate, per 1,000 words, are as good as none. */
const LEAST = 0.05;

/** All that goes off now and then, the worst first. */
export function accidentRows({ offences }: Overview, source: LegendSource): readonly AccidentRow[] {
  const worst = offences[0]?.misfires ?? 0;
  return offences
    .filter(({ misfires }) => misfires !== null && misfires >= LEAST)
    .map((offence) => rowOf(offence, worst, source));
}

function rowOf(offence: Offence, worst: number, source: LegendSource): AccidentRow {
  const { offender, misses, holds, damage } = offence;
  const misfires = offence.misfires ?? 0;
  const name = offenderInWords(offender, source);
  const runs = damage.filter((run) => run.misfires >= misfires * 0.1).slice(0, 3);
  return {
    id: idOfOffender(offender),
    name,
    figures: `${rateInWords(misfires)} (${rangeInWords(misfires)}); misses ${missesInWords(misses)}${holdsInWords(holds)}`,
    at: runs.length === 0 ? '' : `at ${runs.map(({ things }) => runInWords(things, source)).join(', ')}`,
    share: worst === 0 ? 0 : misfires / worst,
    lit: litByOffenders([offender], name, source),
    card:
      offender.what === 'chord'
        ? { card: 'chord', chord: offender.chord }
        : { card: 'key', key: offender.key },
  };
}

/** How often a chord comes as its own hold, where it has one and that is worth saying. */
function holdsInWords(holds: number | null): string {
  return holds === null || holds < LEAST ? '' : `; comes as its hold ${missesInWords(holds)}`;
}

/** What tells things that go off from one another. */
export function idOfOffender(offender: Offender): string {
  return offender.what === 'chord' ? `chord ${offender.chord}` : `hold ${offender.layer} ${offender.key}`;
}

/** What something that goes off is called: "chord Tab", "a to Left Shift". */
export function offenderInWords(offender: Offender, source: LegendSource): string {
  const { keymap } = source;
  if (offender.what === 'chord') {
    const chord = chordsOf(keymap).find(({ id }) => id === offender.chord);
    return `chord ${chord === undefined ? offender.chord : (chord.name ?? actionInWords(chord.action, source))}`;
  }
  const layer = keymap.layers.find(({ id }) => id === offender.layer);
  const binding = layer === undefined ? undefined : bindingOn(layer, offender.key);
  const [tap, hold] = [binding?.tap, binding?.hold].map((action) =>
    action === undefined ? '' : actionInWords(action, source),
  );
  const where = layer === keymap.layers[0] ? '' : ` on ${layer?.name ?? offender.layer}`;
  return `${tap} to ${hold}${where}`;
}

/** What a press gives: "a", "! on Symbols". */
export function pressInWords({ key, layer: id }: Place, source: LegendSource): string {
  const { keymap } = source;
  const layer = keymap.layers.find((each) => each.id === id);
  const tap = layer === undefined ? undefined : bindingOn(layer, key)?.tap;
  const what = tap === undefined ? keyName(keymap.board, key) : actionInWords(tap, source);
  return layer === keymap.layers[0] ? what : `${what} on ${layer?.name ?? id}`;
}

/** What lights up for things that go off: the keys of holds, the outlines of chords. */
export function litByOffenders(offenders: readonly Offender[], why: string, { keymap }: LegendSource): Lit {
  const chords = offenders.flatMap((each) => (each.what === 'chord' ? [each.chord] : []));
  const ofChords = chordsOf(keymap)
    .filter(({ id }) => chords.includes(id))
    .flatMap(({ keys }) => keys);
  const holds = offenders.flatMap((each) => (each.what === 'hold' ? [each.key] : []));
  return { why, keys: [...new Set([...holds, ...ofChords])], chords, layers: [], order: [] };
}

/** The whole in two sentences: misfires and waits. */
export function totalInWords({
  misfires,
  meanDelayMs,
}: Overview): readonly [figure: string, rest: string, wait: string] {
  const range = rangeInWords(misfires);
  const figure = range === '' ? 'practically none' : plainNumber(misfires);
  return [
    figure,
    range === '' ? 'misfires in 1,000 words' : `misfires in 1,000 words, ${range}`,
    `A key waits ${Math.round(meanDelayMs)} ms on average before it is seen.`,
  ];
}

/** How much of the text is left out, as a share of its characters. */
export function leftOutInWords(untypable: number): string {
  const percent = 100 * untypable;
  const much = percent < 0.1 ? 'Under 0.1' : percent.toFixed(percent < 1 ? 1 : 0);
  return `${much} % of the text cannot be typed on this design and is left out.`;
}

/** What protections change, keys with the same changes in one row. */
export function protectionRows(
  { holds }: Protections,
  { keymap }: LegendSource,
): readonly { readonly name: string; readonly words: string }[] {
  const rows = new Map<string, ProtectedHold[]>();
  for (const hold of holds) {
    const change = changeInWords(hold);
    rows.set(change, [...(rows.get(change) ?? []), hold]);
  }
  return [...rows].map(([change, same]) => {
    const sum = (of: 'misfiresBefore' | 'misfiresAfter') => same.reduce((all, hold) => all + hold[of], 0);
    const most = (of: 'missesBefore' | 'missesAfter') => Math.max(...same.map((hold) => hold[of]));
    const keys = same.map(({ key }) => keyName(keymap.board, key)).join(', ');
    const misfires = `misfires ${plainOrNone(sum('misfiresBefore'))} → ${plainOrNone(sum('misfiresAfter'))}`;
    const misses = `misses ${plainOrNone(most('missesBefore'))} → ${plainOrNone(most('missesAfter'))} of 1,000`;
    return {
      name: change.charAt(0).toUpperCase() + change.slice(1),
      words: `${keys}: ${misfires}, ${misses}`,
    };
  });
}

function changeInWords({ change }: ProtectedHold): string {
  return [
    ...(change.holdBy === undefined ? [] : [`hold by ${RULE_WORDS[change.holdBy]}`]),
    ...(change.holdAfterMs === undefined ? [] : [`hold after ${change.holdAfterMs} ms`]),
    ...(change.quietBeforeMs === undefined ? [] : [`${change.quietBeforeMs} ms of quiet before`]),
    ...(change.sameHandTaps === true ? ['same hand taps'] : []),
  ].join(', ');
}

function plainOrNone(rate: number): string {
  return rate < LEAST ? '0' : plainNumber(rate);
}

/** What the changes come to. */
export function protectionsInWords(
  { changes, before, after, enough, holds, hurt }: LetterProtections,
  most: number,
): string {
  if (before <= most) return `Hold/tap letters misfire ${timesInWords(before)}: nothing need change.`;
  const falls = `hold/tap letters misfire ${timesInWords(after)} instead of ${rateInWords(before)}`;
  if (changes === 0) return `No change brings that: ${falls}.`;
  const how = `${counted(changes, 'change')} on ${counted(holds.length, 'key')}`;
  const but =
    hurt.length === 0
      ? ''
      : ` ${counted(hurt.length, 'need')} would then be clumsy or missing: ${hurt.slice(0, 5).join(', ')}.`;
  return enough
    ? `With ${how}, ${falls}.${but}`
    : `Nothing reaches that with so few misses: with ${how}, ${falls}.${but}`;
}

function timesInWords(rate: number): string {
  const words = rateInWords(rate);
  return rate < LEAST ? words : `${words} times in 1,000 words`;
}

function counted(count: number, thing: string): string {
  return `${count} ${thing}${count === 1 ? '' : 's'}`;
}
