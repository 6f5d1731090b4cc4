import { NODES } from './distributions.ts';
import { ANY_LETTERS, type Seat } from './pair-class.ts';
import { SLIPS_PER_1000_WORDS } from './parameters.ts';
import type { Situation } from './situation.ts';
import { runWithin } from './together.ts';

/** A chord as far as misfires go: keys by their place on the board, layers as a mask. */
export interface ChordToWatch {
  readonly keys: readonly number[];
  readonly windowMs: number;
  readonly quietBeforeMs: number;
  readonly layers: number;
}

/** A run of presses that sets something off, and how often. */
export interface Cause {
  readonly presses: readonly number[];
  readonly per1000Words: number;
}

/** Where in its window a chord's last key comes on average, given that it does. */
const LATE = 0.8;

/** The longest run that the counts of a text hold. */
const MOST_KEYS = 4;

/**
 * Misfires of a chord in 1,000 words, by the runs of presses that cause them; null for five keys, of which counts of
 * four say nothing. Slips of neighbouring keys have no run and come last with an empty one.
 */
export function chordMisfires(
  situation: Situation,
  chord: ChordToWatch,
  others: readonly ChordToWatch[],
): readonly Cause[] | null {
  if (chord.keys.length > MOST_KEYS) return null;
  const causes: Cause[] = [];
  for (const run of runsOver(situation, chord)) {
    const per1000Words = situation.contexts.countOf(run) * misfireShare(situation, chord, others, run);
    if (per1000Words > 0) causes.push({ presses: run, per1000Words });
  }
  const slips = slipsOf(situation, chord);
  return slips > 0 ? [...causes, { presses: [], per1000Words: slips }] : causes;
}

/** The runs of the text that press exactly the chord's keys, one after the other, beginning on a layer where it is live. */
function runsOver(situation: Situation, { keys, layers }: ChordToWatch): readonly (readonly number[])[] {
  const { contexts, runs } = situation;
  let found: (readonly number[])[] = [[]];
  for (let length = 0; length < keys.length; length++) {
    found = found.flatMap((run) =>
      keys.flatMap((key) =>
        (contexts.ofKey.get(key) ?? []).flatMap((press) => {
          if (run.some((other) => runs.presses[other]?.keys[0] === key)) return [];
          const isLive = length > 0 || (layers & (1 << (runs.presses[press]?.layer ?? 0))) !== 0;
          const longer = [...run, press];
          return isLive && (length === 0 || contexts.countOf(longer) > 0) ? [longer] : [];
        }),
      ),
    );
  }
  return found;
}

/** Of how many such runs one sets the chord off. */
function misfireShare(
  situation: Situation,
  chord: ChordToWatch,
  others: readonly ChordToWatch[],
  run: readonly number[],
): number {
  const { kinds, model } = situation;
  const intervals = run.slice(1).map((press, at) => kinds.kind(run[at] ?? 0, press));
  const fingers = run.slice(0, -1).map((press) => kinds.fingers[press] ?? 0);
  const within = runWithin(model, intervals, fingers, chord.windowMs);
  const free = freeToBegin(situation, chord, others, run);
  const taken = takenByLarger(situation, chord, others, run);
  return NODES.reduce(
    (sum, { weight }, node) =>
      sum + weight * (within[node] ?? 0) * (free[node] ?? 1) * (1 - (taken[node] ?? 0)),
    0,
  );
}

/** For each node, P(quiet enough before the first key, and that key not taken by a chord with the key before it). */
function freeToBegin(
  { contexts, kinds, model, runs }: Situation,
  { quietBeforeMs }: ChordToWatch,
  others: readonly ChordToWatch[],
  run: readonly number[],
): readonly number[] {
  const [first = 0] = run;
  const isWatched = others.some(({ keys }) => keys.includes(runs.presses[first]?.keys[0] ?? -1));
  if (quietBeforeMs === 0 && !isWatched) return NODES.map(() => 1);
  let before = contexts.before(run);
  if (before.length === 0) before = contexts.before([first]);
  const all = before.reduce((sum, { per1000Words }) => sum + per1000Words, 0);
  if (all === 0) return NODES.map((_, node) => 1 - model.intervals.within(ANY_LETTERS, node, quietBeforeMs));
  return NODES.map((_, node) => {
    let free = 0;
    for (const { press, per1000Words } of before) {
      const kind = kinds.kind(press, first);
      const quiet = quietBeforeMs === 0 ? 1 : 1 - model.intervals.within(kind, node, quietBeforeMs);
      const window = sharedWindow(
        others,
        runs.presses[press]?.keys[0] ?? -1,
        runs.presses[first]?.keys[0] ?? -1,
        runs.presses[press]?.layer ?? 0,
      );
      const taken =
        window === 0 ? 0 : (runWithin(model, [kind], [kinds.fingers[press] ?? 0], window)[node] ?? 0);
      free += per1000Words * Math.min(quiet, 1 - taken);
    }
    return free / all;
  });
}

/** The longest window of the chords on a layer that both keys belong to, ms; 0 without any. */
export function sharedWindow(
  chords: readonly ChordToWatch[],
  one: number,
  other: number,
  layer: number,
): number {
  let longest = 0;
  if (one === other) return 0;
  for (const { keys, windowMs, layers } of chords)
    if ((layers & (1 << layer)) !== 0 && windowMs > longest && keys.includes(one) && keys.includes(other))
      longest = windowMs;
  return longest;
}

/** For each node, P(one key more comes in time and makes a larger chord of it). */
function takenByLarger(
  { contexts, kinds, model, runs }: Situation,
  { keys, windowMs }: ChordToWatch,
  others: readonly ChordToWatch[],
  run: readonly number[],
): readonly number[] {
  const larger = others.filter(
    (other) => other.keys.length === keys.length + 1 && keys.every((key) => other.keys.includes(key)),
  );
  const [last = 0] = run.slice(-1);
  const taken = NODES.map(() => 0);
  if (larger.length === 0) return taken;
  const after = contexts.after(last);
  const all = after.reduce((sum, { per1000Words }) => sum + per1000Words, 0);
  for (const { press, per1000Words } of after) {
    const key = runs.presses[press]?.keys[0] ?? -1;
    const chord = larger.find((other) => other.keys.includes(key) && !keys.includes(key));
    if (chord === undefined) continue;
    const within = runWithin(
      model,
      [kinds.kind(last, press)],
      [kinds.fingers[last] ?? 0],
      Math.max(0, chord.windowMs - LATE * Math.min(windowMs, chord.windowMs)),
    );
    for (const node of NODES.keys())
      taken[node] = (taken[node] ?? 0) + (per1000Words / all) * (within[node] ?? 0);
  }
  return taken;
}

/** Neighbouring keys of a row that now and then come down together whatever the text is; both must be typed with. */
function slipsOf({ runs, contexts }: Situation, { keys, windowMs, layers }: ChordToWatch): number {
  const [one, other] = keys.map((key) => runs.seats[key]);
  if (keys.length !== 2 || one === undefined || other === undefined || (layers & 1) === 0) return 0;
  if (!areNeighbours(one, other) || !keys.every((key) => contexts.ofKey.has(key))) return 0;
  return SLIPS_PER_1000_WORDS * slipShare(windowMs);
}

/** Neighbouring keys of a row under neighbouring fingers. */
export function areNeighbours(one: Seat, other: Seat): boolean {
  return (
    one.left === other.left &&
    one.row === other.row &&
    one.column === 0 &&
    other.column === 0 &&
    Math.abs(one.finger - other.finger) === 1 &&
    Math.min(one.finger, other.finger) > 0
  );
}

/** Slips within a window over those within 40 ms: evenly up to there, a few more up to 60. */
export function slipShare(windowMs: number): number {
  return Math.min(1, windowMs / 40) + 0.4 * Math.min(1, Math.max(0, (windowMs - 40) / 20));
}
