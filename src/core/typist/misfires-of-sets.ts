import { areNeighbours, slipShare } from './chord-misfires.ts';
import { NODES } from './distributions.ts';
import { SLIPS_PER_1000_WORDS } from './parameters.ts';
import type { Situation } from './situation.ts';
import { runWithin } from './together.ts';

/** Numbers of keys are packed into one number, sorted; 256 is more than any board has. */
const BASE = 256;

/** The name of a set of keys in `misfiresOfSets`; sorted ascending. */
export function setNumber(keys: readonly number[]): number {
  return keys.reduce((packed, key) => packed * BASE + key + 1, 0);
}

/**
 * Misfires in 1,000 words that every set of two to four keys would have as a chord of that window, live on the layers: all
 * runs of the text at once. Sets that are not named have none. Other chords are not looked at.
 */
export function misfiresOfSets(
  situation: Situation,
  windowMs: number,
  layers: number,
): ReadonlyMap<number, number> {
  const { runs, kinds, model } = situation;
  const rates = new Map<number, number>();
  const shares = new Map<string, number>();
  for (const { presses, per1000Words } of runs.runs.slice(1).flat()) {
    const keys = keysOf(situation, presses, layers);
    if (keys === null) continue;
    const intervals = presses.slice(1).map((press, at) => kinds.kind(presses[at] ?? 0, press));
    const fingers = presses.slice(0, -1).map((press) => kinds.fingers[press] ?? 0);
    const name = `${intervals.join()} ${fingers.join()}`;
    const share = shares.get(name) ?? mean(runWithin(model, intervals, fingers, windowMs));
    shares.set(name, share);
    const set = setNumber(keys);
    rates.set(set, (rates.get(set) ?? 0) + share * per1000Words);
  }
  addSlips(situation, rates, windowMs, layers);
  return rates;
}

/** The keys of a run, sorted; null where they are not different keys pressed one at a time on the layers. */
function keysOf({ runs }: Situation, presses: readonly number[], layers: number): readonly number[] | null {
  const keys: number[] = [];
  for (const [at, number] of presses.entries()) {
    const press = runs.presses[number];
    const [key = -1] = press?.keys ?? [];
    if (press === undefined || press.keys.length > 1 || keys.includes(key)) return null;
    if (at === 0 && (layers & (1 << press.layer)) === 0) return null;
    keys.push(key);
  }
  return keys.sort((one, other) => one - other);
}

function mean(values: readonly number[]): number {
  return NODES.reduce((sum, { weight }, node) => sum + weight * (values[node] ?? 0), 0);
}

function addSlips(
  { runs, contexts }: Situation,
  rates: Map<number, number>,
  windowMs: number,
  layers: number,
): void {
  if ((layers & 1) === 0) return;
  const typed = [...contexts.ofKey.keys()].sort((one, other) => one - other);
  for (const [at, one] of typed.entries())
    for (const other of typed.slice(at + 1)) {
      const [a, b] = [runs.seats[one], runs.seats[other]];
      if (a === undefined || b === undefined || !areNeighbours(a, b)) continue;
      const set = setNumber([one, other]);
      rates.set(set, (rates.get(set) ?? 0) + SLIPS_PER_1000_WORDS * slipShare(windowMs));
    }
}
