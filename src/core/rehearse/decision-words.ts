import { chordById } from '../keymap/lookup.ts';
import { listed, ms, type Names } from './key-words.ts';
import { pressesBetween } from './presses-between.ts';
import type { Decision, Press, Run } from './run.ts';

/** A decision in one sentence for people: who, after how long, against which setting. */
export function decisionWords(run: Run, decision: Decision, names: Names): string {
  switch (decision.what) {
    case 'waiting':
      return waitingWords(decision, names);
    case 'chord':
      return chordWords(run, decision, names);
    case 'no-chord':
      return noChordWords(run, decision, names);
    case 'open':
      return `${who(decision, names)}: tap or hold? Settled after ${ms(waitOf(decision))} at the latest`;
    case 'tap':
    case 'hold':
      return settledWords(run, decision, names);
    case 'layer-on':
    case 'layer-off':
      return `Layer ${names.layer(decision.layer ?? '')} ${decision.what === 'layer-on' ? 'on' : 'off'}: ${decision.why}`;
    case 'no-binding':
      return `${who(decision, names)}: ${decision.why}`;
    default:
      return `${who(decision, names)}, ${decision.what.replace('-', ' ')}: ${decision.why}`;
  }
}

function who({ key, chord }: Decision, names: Names): string {
  if (chord !== undefined) return `Chord ${names.chord(chord)}`;
  return key === undefined ? '' : names.key(key);
}

function waitOf({ data }: Decision): number {
  return (data?.until ?? 0) - (data?.since ?? 0);
}

function waitingWords(decision: Decision, names: Names): string {
  const chords = (decision.data?.chords ?? []).map((id) => names.chord(id));
  return `${who(decision, names)} waits up to ${ms(waitOf(decision))}: it may become ${listed(chords)}`;
}

const AFTER: Partial<Readonly<Record<string, string>>> = {
  G2: '; the next key made no larger chord',
  G4: '; one of them came up',
  G6: '; no larger chord came in time',
};

function chordWords(run: Run, decision: Decision, names: Names): string {
  const { chord = '', rule, data } = decision;
  const presses = pressesOf(run, decision);
  const apart = ms(data?.apartMs ?? 0);
  const window = ms(chordById(run.keymap, chord)?.windowMs ?? 0);
  const [first, last] = [presses[0], presses.at(-1)];
  const came =
    presses.length === 2 && first !== undefined && last !== undefined
      ? `${names.key(first.key)} was still down when ${names.key(last.key)} came after ${apart}`
      : `${listed(presses.map(({ key }) => names.key(key)))} came within ${apart}`;
  return `${came}: chord ${names.chord(chord)} (window ${window})${AFTER[rule] ?? ''}`;
}

function noChordWords(run: Run, decision: Decision, names: Names): string {
  const { data, rule } = decision;
  const keys = data?.keys ?? [];
  const waited = listed(keys.map((key) => names.key(key)));
  const late = lateKey(run, decision);
  if (late !== undefined) {
    const { press, chord, window } = late;
    const after = ms(press.down - (data?.since ?? 0));
    return `${names.key(press.key)} came ${after} after ${names.key(keys[0] ?? '')}: too late for chord ${names.chord(chord)} (window ${ms(window)})`;
  }
  const passed = ms(decision.t - (data?.since ?? 0));
  if (rule === 'G4')
    return `${names.key(data?.by ?? '')} came up after ${passed}: no chord of ${waited} was whole`;
  if (rule === 'G2')
    return `${names.key(data?.by ?? '')} came after ${passed} and makes no chord with ${waited}`;
  return `${waited} waited ${passed} for a chord in vain`;
}

/** How far beyond its window, as a multiple, a key may come and still be taken as meant for the chord. */
const LATE_BY = 2;

/** The press that would have made a chord whole, had the window been wider. */
export function lateKey(run: Run, { data, t }: Decision) {
  const since = data?.since ?? t;
  for (const id of data?.chords ?? []) {
    const chord = chordById(run.keymap, id);
    if (chord === undefined) continue;
    const until = since + LATE_BY * chord.windowMs;
    const downs = chord.keys.map((key) =>
      pressesBetween(run.presses, since, until).find((press) => press.key === key),
    );
    const last = downs.reduce(
      (late, press) => ((press?.down ?? 0) > (late?.down ?? 0) ? press : late),
      downs[0],
    );
    if (last === undefined || downs.includes(undefined)) continue;
    if (last.down > since + chord.windowMs) return { press: last, chord: id, window: chord.windowMs };
  }
  return undefined;
}

function settledWords(run: Run, decision: Decision, names: Names): string {
  const { what, rule, data, why } = decision;
  const name = who(decision, names);
  const by = data?.by === undefined ? '' : byWords(run, data.by, names);
  const [press] = pressesOf(run, decision);
  const dwell = press?.up === null || press === undefined ? null : press.up - press.down;
  switch (rule) {
    case 'S3':
      return `${name} came up ${dwell === null ? 'in time' : `after ${ms(dwell)}`}: tap`;
    case 'S4':
      return `${by} of the same hand was pressed while ${name} was down: tap`;
    case 'S5':
      return `${by} was pressed while ${name} was down: hold`;
    case 'S6':
      return `${by} was pressed and released while ${name} was down: hold`;
    case 'S8':
      return `${name} was down ${ms(decision.t - (data?.since ?? decision.t))}, as long as “hold after” allows: hold`;
    case 'S14':
      return `${by} was pressed after ${name} had been down alone for long: hold`;
    case 'S9':
      return `${name}: ${what}, the only action that it has`;
    default:
      return `${name}: ${what}, ${why}`;
  }
}

function byWords(run: Run, by: string, names: Names): string {
  return chordById(run.keymap, by) === undefined ? names.key(by) : `Chord ${names.chord(by)}`;
}

function pressesOf(run: Run, { presses }: Decision): readonly Press[] {
  return presses.flatMap((at) => run.presses[at] ?? []);
}

/**
 * Whether a decision is worth a mark on the time line: not a key that acts at once because there is nothing to decide,
 * nor one that waited alone for a chord that nobody was about to press.
 */
export function isTelling(run: Run, decision: Decision): boolean {
  if (decision.what === 'waiting' || decision.what === 'open') return false;
  if (decision.what === 'tap' || decision.what === 'hold') return decision.rule !== 'S9';
  if (decision.what !== 'no-chord') return true;
  return (decision.data?.keys?.length ?? 0) > 1 || lateKey(run, decision) !== undefined;
}
