import { randomLcg } from 'd3-random';
import type { KeyEvent } from '../base/key-event.ts';
import type { HostLayout } from '../host/host-layout.ts';
import type { Keymap } from '../keymap/types.ts';
import { createRunCounter, type Follower, type RunCounts } from '../needs/counts-runs.ts';
import { Hands } from '../typist/hands.ts';
import { ANY_LETTERS } from '../typist/pair-class.ts';
import type { Person } from '../typist/person.ts';
import { type PressRuns, pressRunsOf } from '../typist/press-runs.ts';
import { sampleTypist } from '../typist/sample-typist.ts';
import { type Situation, situationOf } from '../typist/situation.ts';
import { fromZero } from './stream.ts';

/** Who types. */
export interface Typing {
  /** The typists that one is drawn from: the one drawn may be slower or faster than they are on average. */
  readonly person: Person;
  readonly seed: number;
}

/** A text as presses, and what of it could not be typed. */
export interface WrittenText {
  readonly events: readonly KeyEvent[];
  /** Characters without a route on this design, each once, in the order of the text. */
  readonly missing: readonly string[];
  /** The text without them: what was meant to come out. */
  readonly meant: string;
}

/**
 * Turns a text into presses by the cheapest routes, with the times of one typist drawn from those; the
 * same seed gives the same presses. language: counts of a longer text, so that pairs are as practised as there.
 */
export function typedBy(
  keymap: Keymap,
  host: HostLayout,
  text: string,
  { person, seed }: Typing,
  language: RunCounts | null,
): WrittenText {
  const chars = [...text.normalize('NFC').replace(/\r\n?/g, '\n')];
  const runs = runsOf(keymap, host, chars, language);
  const situation = situationOf(runs, person);
  const typable = (char: string) => (runs.pressesOf.get(char) ?? null) !== null;
  const events = pressed(situation, chars, randomLcg(scattered(seed)));
  return {
    events: fromZero(events),
    missing: [...new Set(chars)].filter((char) => !typable(char)),
    meant: chars.filter(typable).join(''),
  };
}

interface Latest {
  readonly host: HostLayout;
  readonly text: string;
  readonly language: RunCounts | null;
  readonly runs: PressRuns;
}

const latest = new WeakMap<Keymap, Latest>();

/** The same text is mostly typed again, by another typist; what does not depend on the typist is remembered. */
function runsOf(keymap: Keymap, host: HostLayout, chars: readonly string[], language: RunCounts | null) {
  const text = chars.join('');
  const known = latest.get(keymap);
  if (known?.host === host && known.text === text && known.language === language) return known.runs;
  const runs = pressRunsOf(keymap, host, together(countsOf(chars), language));
  latest.set(keymap, { host, text, language, runs });
  return runs;
}

/** Neighbouring seeds must not give neighbouring sequences; in [0, 1). */
function scattered(seed: number): number {
  const mixed = Math.imul((seed | 0) ^ 0x9e3779b9, 0x85ebca6b);
  return ((mixed ^ (mixed >>> 13)) >>> 0) / 2 ** 32;
}

function pressed(situation: Situation, chars: readonly string[], random: () => number): readonly KeyEvent[] {
  const { runs, kinds, model } = situation;
  const events: KeyEvent[] = [];
  const listener = { event: (event: KeyEvent) => void events.push(event), intend() {} };
  const hands = new Hands(situation, sampleTypist(model, random), listener, random);
  let previous = -1;
  for (const char of chars) {
    const numbers = runs.pressesOf.get(char) ?? null;
    if (numbers === null) previous = -1;
    for (const number of numbers ?? []) {
      const press = runs.presses[number];
      if (press === undefined) continue;
      const kind = previous === -1 ? ANY_LETTERS : kinds.kind(previous, number);
      hands.press(press, kind, { ...press, press: number });
      previous = number;
    }
  }
  hands.rest();
  return events;
}

function countsOf(chars: readonly string[]): RunCounts {
  const counter = createRunCounter();
  counter.add(chars.join(''));
  counter.endText();
  const counts = counter.counts();
  // Clusters of several code points are no runs, but each of their characters must have a route looked for.
  const known = new Set((counts.after.get('') ?? []).map(({ char }) => char));
  const others = [...new Set(chars)].filter((char) => !known.has(char));
  const first = [...(counts.after.get('') ?? []), ...others.map((char) => ({ char, count: 1 }))];
  return { total: counts.total + others.length, after: new Map([...counts.after, ['', first]]) };
}

/** The sum of two counts. */
function together(one: RunCounts, other: RunCounts | null): RunCounts {
  if (other === null) return one;
  const after = new Map<string, readonly Follower[]>(other.after);
  for (const [before, followers] of one.after) {
    const sums = new Map((after.get(before) ?? []).map(({ char, count }) => [char, count]));
    for (const { char, count } of followers) sums.set(char, (sums.get(char) ?? 0) + count);
    after.set(
      before,
      [...sums].map(([char, count]) => ({ char, count })),
    );
  }
  return { total: one.total + other.total, after };
}
