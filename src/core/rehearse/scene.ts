import type { Finger, Hand, KeyId } from '../keymap/types.ts';
import { isTelling } from './decision-words.ts';
import { type Names, producedWord } from './key-words.ts';
import { firstAt } from './presses-between.ts';
import type { Decision, PressResult, Run } from './run.ts';

/** The line of one key. */
export interface Lane {
  readonly key: KeyId;
  readonly label: string;
  readonly hand: Hand;
  readonly finger: Finger;
  /** The first of its finger. */
  readonly startsFinger: boolean;
  /** The first of its hand. */
  readonly startsHand: boolean;
}

/** A press, ms. Until it is decided it is drawn hollow. */
export interface Bar {
  readonly lane: number;
  readonly from: number;
  readonly decided: number | null;
  /** Null while the key is down. */
  readonly to: number | null;
  readonly result: PressResult;
}

/** A span in which something is being waited for, ms: a chord's window over its keys, or a hold/tap key's threshold. */
export interface Band {
  readonly kind: 'window' | 'threshold';
  readonly lanes: readonly number[];
  readonly from: number;
  readonly to: number;
}

/** A decision that is worth a mark. */
export interface Mark {
  readonly t: number;
  /** Lanes of the keys that it is about, from the top. */
  readonly lanes: readonly number[];
  readonly what: Decision['what'];
  /** Its place among the run's decisions. */
  readonly decision: number;
}

/** Something that came out. */
export interface Note {
  readonly t: number;
  readonly text: string;
  readonly kind: 'char' | 'key';
  readonly item: number;
}

/** What lies between two times, as plain data. */
export interface Scene {
  readonly bars: readonly Bar[];
  readonly bands: readonly Band[];
  readonly marks: readonly Mark[];
  readonly notes: readonly Note[];
}

const FINGERS: readonly (readonly [Hand, Finger])[] = [
  ['left', 'little'],
  ['left', 'ring'],
  ['left', 'middle'],
  ['left', 'index'],
  ['left', 'thumb'],
  ['right', 'thumb'],
  ['right', 'index'],
  ['right', 'middle'],
  ['right', 'ring'],
  ['right', 'little'],
];

/** The lanes of the keys that a run presses, as the fingers lie from left to right; within a finger from the top row down. */
export function lanesOf({ keymap, presses }: Run, names: Names): readonly Lane[] {
  const used = new Set(presses.map(({ key }) => key));
  const lanes: Lane[] = [];
  for (const [hand, finger] of FINGERS) {
    const keys = keymap.board.keys
      .filter((key) => key.hand === hand && key.finger === finger && used.has(key.id))
      .sort((one, other) => one.y - other.y || one.x - other.x || (one.id < other.id ? -1 : 1));
    for (const [at, { id }] of keys.entries()) {
      const startsHand = at === 0 && lanes.at(-1)?.hand !== hand;
      lanes.push({ key: id, label: names.key(id), hand, finger, startsFinger: at === 0, startsHand });
    }
  }
  return lanes;
}

/** Of a run's lanes, those on which there is a press or something waits between two times, ms: where there is no room for all. */
export function lanesSeen(run: Run, lanes: readonly Lane[], from: number, to: number): readonly Lane[] {
  const { bars, bands } = sceneOf(run, lanes, from, to);
  const used = new Set([...bars.map(({ lane }) => lane), ...bands.flatMap(({ lanes: on }) => on)]);
  const seen = lanes.filter((_, at) => used.has(at));
  return seen.map((lane, at) => {
    const before = seen[at - 1];
    const startsHand = before?.hand !== lane.hand;
    return { ...lane, startsHand, startsFinger: startsHand || before.finger !== lane.finger };
  });
}

/** What lies between two times, ms; everything that reaches into them is in it. */
export function sceneOf(run: Run, lanes: readonly Lane[], from: number, to: number): Scene {
  const laneOf = new Map(lanes.map(({ key }, lane) => [key, lane]));
  const decisions = between(run.decisions, from - run.longestMs, to, ({ t }) => t);
  return {
    bars: barsOf(run, laneOf, from, to),
    bands: bandsOf(run, decisions, laneOf, from, to),
    marks: between(tellingOf(run), from, to, ({ t }) => t).map(({ item }) => ({
      t: item.t,
      lanes: lanesOfPresses(run, run.decisions[item.decision]?.presses ?? [], laneOf),
      what: item.what,
      decision: item.decision,
    })),
    notes: between(run.items, from, to, ({ t }) => t).flatMap(({ item, at }) =>
      item.produced.kind === 'modifier'
        ? []
        : [{ t: item.t, text: producedWord(item.produced), kind: item.produced.kind, item: at }],
    ),
  };
}

/** Decisions that are worth a mark, found once; `settled` of the run's decisions have been looked at for good. */
interface Telling {
  settled: number;
  /** Of the marks, those that stay whatever comes. */
  kept: number;
  readonly marks: Omit<Mark, 'lanes'>[];
  /** When the run ended and how many decisions it had when this was looked at. */
  endMs: number;
  count: number;
}

const telling = new WeakMap<Run, Telling>();

/** A key that comes so much later can no longer be one that was late for a chord, ms: twice the longest window there may be. */
const LATE_MS = 20_000;

/** While a run grows only its end is looked at anew: whether a key was late for a chord shows when it comes. */
function tellingOf(run: Run): readonly Omit<Mark, 'lanes'>[] {
  const now = telling.get(run) ?? { settled: 0, kept: 0, marks: [], endMs: -1, count: -1 };
  telling.set(run, now);
  if (now.endMs === run.endMs && now.count === run.decisions.length) return now.marks;
  now.marks.length = now.kept;
  for (let at = now.settled; at < run.decisions.length; at++) {
    const decision = run.decisions[at];
    if (decision === undefined) continue;
    if (isTelling(run, decision)) now.marks.push({ t: decision.t, what: decision.what, decision: at });
    if (at === now.settled && decision.t < run.endMs - LATE_MS) {
      now.settled = at + 1;
      now.kept = now.marks.length;
    }
  }
  now.endMs = run.endMs;
  now.count = run.decisions.length;
  return now.marks;
}

function between<Item>(items: readonly Item[], from: number, to: number, timeOf: (item: Item) => number) {
  const found: { readonly item: Item; readonly at: number }[] = [];
  for (let at = firstAt(items, from, timeOf); at < items.length; at++) {
    const item = items[at];
    if (item === undefined || timeOf(item) > to) break;
    found.push({ item, at });
  }
  return found;
}

function barsOf(run: Run, laneOf: ReadonlyMap<KeyId, number>, from: number, to: number): readonly Bar[] {
  return between(run.presses, from - run.longestMs, to, ({ down }) => down).flatMap(({ item }) => {
    const lane = laneOf.get(item.key);
    if (lane === undefined || (item.up !== null && item.up < from)) return [];
    return [{ lane, from: item.down, decided: item.decidedAt, to: item.up, result: item.result }];
  });
}

function lanesOfPresses(run: Run, presses: readonly number[], laneOf: ReadonlyMap<KeyId, number>) {
  return presses
    .flatMap((at) => laneOf.get(run.presses[at]?.key ?? '') ?? [])
    .sort((one, other) => one - other);
}

function bandsOf(
  run: Run,
  decisions: readonly { readonly item: Decision }[],
  laneOf: ReadonlyMap<KeyId, number>,
  from: number,
  to: number,
): readonly Band[] {
  const bands: Band[] = [];
  for (const { item } of decisions) {
    const { since, until, keys } = item.data ?? {};
    const isWindow = item.what === 'waiting';
    if ((!isWindow && item.what !== 'open') || since === undefined || until === undefined) continue;
    if (until < from || since > to) continue;
    const lanes = isWindow
      ? (keys ?? []).flatMap((key) => laneOf.get(key) ?? [])
      : lanesOfPresses(run, item.presses, laneOf);
    const last = bands.at(-1);
    // More keys that wait for the same chord widen the band that is there.
    if (isWindow && last?.kind === 'window' && last.from === since) bands.pop();
    const ends = isWindow && last?.from === since ? Math.max(last.to, until) : until;
    bands.push({ kind: isWindow ? 'window' : 'threshold', lanes, from: since, to: ends });
  }
  return bands;
}
