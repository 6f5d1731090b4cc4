import { compileKeymap } from '../engine/compile.ts';
import type { Compiled } from '../engine/compiled.ts';
import type { HostLayout } from '../host/host-layout.ts';
import type { Keymap } from '../keymap/types.ts';
import type { Follower, RunCounts } from '../needs/counts-runs.ts';
import { needOfCharacter } from '../needs/text-needs.ts';
import { findRoutes } from '../routes/find-routes.ts';
import { type Seat, seatsOf } from './pair-class.ts';
import { CHARACTERS_PER_WORD } from './parameters.ts';
import { type Press, pressesOf } from './presses.ts';

/** A run of presses by their numbers, and how often it comes in 1,000 words. */
export interface PressRun {
  readonly presses: readonly number[];
  readonly per1000Words: number;
}

/** What follows what on the keys of a design when a text is typed on it. */
export interface PressRuns {
  readonly compiled: Compiled;
  readonly seats: readonly Seat[];
  /** The different presses that the text needs; runs refer to them by number. */
  readonly presses: readonly Press[];
  /** By length less one: runs of one to four presses. Those of one and two are exact, longer ones may lack rare runs. */
  readonly runs: readonly (readonly PressRun[])[];
  /** The presses of each character, null where the design cannot type it. */
  readonly pressesOf: ReadonlyMap<string, readonly number[] | null>;
  /** Share of the text's characters that the design cannot type; they end a run. */
  readonly untypable: number;
}

const LONGEST = 4;
/** Numbers of presses in a run are packed into one number; a design with more different presses than this loses the rest. */
const MOST_PRESSES = 4096;

/** Carries the counts of a text over to the keys of a design: layer keys, Shift and chords are presses too. */
export function pressRunsOf(keymap: Keymap, host: HostLayout, counts: RunCounts): PressRuns {
  const compiled = compileKeymap(keymap, host);
  const typing = typingOf(keymap, host, compiled, counts.after.get('') ?? []);
  const tallies = Array.from({ length: LONGEST }, () => new Map<number, number>());
  eachRun(counts, (chars, weight) => addRuns(tallies, chars, typing.pressesOf, weight));
  const per1000 = (CHARACTERS_PER_WORD * 1000) / Math.max(1, counts.total);
  const runs = tallies.map((tally, at) => {
    const list: PressRun[] = [];
    for (const [packed, count] of tally)
      list.push({ presses: unpacked(packed, at + 1), per1000Words: count * per1000 });
    return list;
  });
  return { compiled, seats: seatsOf(keymap.board), runs, ...typing };
}

function typingOf(keymap: Keymap, host: HostLayout, compiled: Compiled, letters: readonly Follower[]) {
  const presses: Press[] = [];
  const numberOf = new Map<string, number>();
  const register = (press: Press): number => {
    const name = [press.keys.join('+'), press.chord, press.layer, press.asHold, press.held].join(' ');
    const number = numberOf.get(name) ?? presses.push(press) - 1;
    numberOf.set(name, number);
    return Math.min(number, MOST_PRESSES - 1);
  };
  const routes = findRoutes(
    keymap,
    host,
    letters.map(({ char }) => needOfCharacter(char)),
  );
  let missing = 0;
  let all = 0;
  const numbers = new Map<string, readonly number[] | null>();
  for (const [at, { char, count }] of letters.entries()) {
    const route = routes[at]?.route ?? null;
    all += count;
    if (route === null) missing += count;
    numbers.set(char, route === null ? null : pressesOf(compiled, route).map(register));
  }
  return { presses, pressesOf: numbers, untypable: all === 0 ? 0 : missing / all };
}

/** Each run of characters with how often it stands in the text without being the beginning of a longer run that is known. */
function eachRun(counts: RunCounts, take: (chars: readonly string[], weight: number) => void): void {
  for (const [before, followers] of counts.after) {
    const chars = [...before];
    for (const { char, count } of followers) {
      const run = [...chars, char];
      const longer = run.length < LONGEST ? counts.after.get(before + char) : undefined;
      let rest = count;
      for (const next of longer ?? []) rest -= next.count;
      if (rest > 0) take(run, rest);
    }
  }
}

/** Counts the runs of presses that begin within the first character's. */
function addRuns(
  tallies: readonly Map<number, number>[],
  chars: readonly string[],
  pressesOfChar: ReadonlyMap<string, readonly number[] | null>,
  weight: number,
): void {
  const line: number[] = [];
  let starts = 0;
  for (const [at, char] of chars.entries()) {
    const own = pressesOfChar.get(char);
    if (own === null || own === undefined) break;
    for (const press of own) line.push(press);
    if (at === 0) starts = line.length;
  }
  for (let start = 0; start < starts; start++) {
    let packed = 0;
    for (let length = 1; length <= LONGEST && start + length <= line.length; length++) {
      packed = packed * MOST_PRESSES + (line[start + length - 1] ?? 0);
      const tally = tallies[length - 1];
      tally?.set(packed, (tally.get(packed) ?? 0) + weight);
    }
  }
}

function unpacked(packed: number, length: number): number[] {
  const presses: number[] = Array(length);
  let rest = packed;
  for (let at = length - 1; at >= 0; at--) {
    presses[at] = rest % MOST_PRESSES;
    rest = Math.floor(rest / MOST_PRESSES);
  }
  return presses;
}
