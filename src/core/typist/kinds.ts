import { type FingerNumber, fingerNumber } from './dwells.ts';
import { AFTER_HOLD, type IntervalKind, intervalKind } from './pair-class.ts';
import type { PressRuns } from './press-runs.ts';

/** For the presses of a text on a design: which finger each is, and which kind of interval leads from one to the next. */
export interface Kinds {
  readonly fingers: readonly FingerNumber[];
  /** From the last key of one press to the first of another, by their numbers. */
  kind(from: number, to: number): IntervalKind;
  /** Per press: times in 1,000 words. */
  readonly per1000: Float64Array;
  /** Times in 1,000 words that one press follows another, by from × number of presses + to. */
  readonly pairs: Float64Array;
}

/** Works out fingers and kinds once for a text on a design. Practice goes by the share of all pairs of letters. */
export function kindsOf({ presses, runs, seats }: PressRuns): Kinds {
  const count = presses.length;
  const pairs = new Float64Array(count * count);
  const per1000 = new Float64Array(count);
  for (const {
    presses: [at = 0],
    per1000Words,
  } of runs[0] ?? [])
    per1000[at] = per1000Words;
  const isLetter = presses.map(
    (press) => !press.held && press.chord < 0 && seats[press.keys[0] ?? 0]?.finger !== 0,
  );
  let letterPairs = 0;
  for (const {
    presses: [from = 0, to = 0],
    per1000Words,
  } of runs[1] ?? []) {
    pairs[from * count + to] = per1000Words;
    if (isLetter[from] === true && isLetter[to] === true) letterPairs += per1000Words;
  }
  const kinds = new Int8Array(count * count).fill(-1);
  const find = (from: number, to: number): IntervalKind => {
    const one = presses[from];
    const other = presses[to];
    const last = one?.keys.at(-1) ?? 0;
    const first = other?.keys[0] ?? 0;
    const [a, b] = [seats[last], seats[first]];
    if (a === undefined || b === undefined || one?.held === true) return AFTER_HOLD;
    return intervalKind(a, b, last === first, (pairs[from * count + to] ?? 0) / letterPairs);
  };
  const fingers = presses.map((press) => {
    const seat = seats[press.keys[0] ?? 0];
    return seat === undefined ? 0 : fingerNumber(seat);
  });
  return {
    fingers,
    per1000,
    pairs,
    kind(from, to) {
      const at = from * count + to;
      const known = kinds[at] ?? -1;
      if (known >= 0) return known;
      const found = find(from, to);
      kinds[at] = found;
      return found;
    },
  };
}
