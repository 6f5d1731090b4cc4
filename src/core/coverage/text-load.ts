import type { BoardKey, Finger, Hand, Keymap } from '../keymap/types.ts';
import type { TextCounts } from '../needs/text-counts.ts';
import type { Route } from '../routes/types.ts';

/** A finger of a hand. */
export type FingerOfHand = `${Hand} ${Finger}`;

/** What a text costs on a design. Shares are of 1. */
export interface TextLoad {
  /** Characters of the text that the design types, and all of them. */
  readonly typed: number;
  readonly total: number;
  /** Key presses per typed character, each key of a chord and each held key counted. */
  readonly pressesPerChar: number;
  readonly holdsPerChar: number;
  /** Share of the presses that each finger makes; fingers without a press are left out. */
  readonly fingers: ReadonlyMap<FingerOfHand, number>;
  readonly hands: ReadonlyMap<Hand, number>;
  /**
   * Share of the neighbouring characters in which the last key of one and the first of the next are two keys of one
   * finger (the thumbs too).
   */
  readonly sameFingerPairs: number;
  /** The characters that cost the most presses in all, dearest first. */
  readonly dearest: readonly { readonly char: string; readonly count: number; readonly presses: number }[];
}

const DEAREST = 12;

/** Weighs the routes of a design by how often each character stands in a text. Characters without a route are left out. */
export function textLoad(
  keymap: Keymap,
  counts: TextCounts,
  routeOf: (char: string) => Route | null,
): TextLoad {
  const keys = new Map(keymap.board.keys.map((key) => [key.id, key]));
  const fingers = new Map<FingerOfHand, number>();
  const hands = new Map<Hand, number>();
  const dearest: { char: string; count: number; presses: number }[] = [];
  let typed = 0;
  let presses = 0;
  let holds = 0;
  for (const [char, count] of counts.chars) {
    const route = routeOf(char);
    if (route === null) continue;
    typed += count;
    presses += count * route.cost.presses;
    holds += count * route.cost.holds;
    for (const id of keysOf(route)) addPress(keys.get(id), count, fingers, hands);
    dearest.push({ char, count, presses: count * route.cost.presses });
  }
  dearest.sort((a, b) => b.presses - a.presses || (a.char < b.char ? -1 : 1));
  return {
    typed,
    total: counts.total,
    pressesPerChar: typed === 0 ? 0 : presses / typed,
    holdsPerChar: typed === 0 ? 0 : holds / typed,
    fingers: shares(fingers),
    hands: shares(hands),
    sameFingerPairs: sameFingerShare(counts, keys, routeOf),
    dearest: dearest.slice(0, DEAREST),
  };
}

function keysOf(route: Pick<Route, 'steps'>): readonly string[] {
  return route.steps.flatMap((step) => (step.move === 'release' ? [] : step.keys));
}

function addPress(
  key: BoardKey | undefined,
  count: number,
  fingers: Map<FingerOfHand, number>,
  hands: Map<Hand, number>,
): void {
  if (key === undefined) return;
  const finger: FingerOfHand = `${key.hand} ${key.finger}`;
  fingers.set(finger, (fingers.get(finger) ?? 0) + count);
  hands.set(key.hand, (hands.get(key.hand) ?? 0) + count);
}

function shares<Name>(counts: ReadonlyMap<Name, number>): ReadonlyMap<Name, number> {
  let sum = 0;
  for (const count of counts.values()) sum += count;
  return new Map([...counts].map(([name, count]) => [name, count / sum]));
}

function sameFingerShare(
  counts: TextCounts,
  keys: ReadonlyMap<string, BoardKey>,
  routeOf: (char: string) => Route | null,
): number {
  const ends = new Map<string, { first: BoardKey | undefined; last: BoardKey | undefined }>();
  for (const char of counts.chars.keys()) {
    const pressed = keysOf(routeOf(char) ?? NOWHERE);
    ends.set(char, { first: keys.get(pressed[0] ?? ''), last: keys.get(pressed.at(-1) ?? '') });
  }
  let all = 0;
  let same = 0;
  for (const [one, row] of counts.pairs) {
    const from = ends.get(one)?.last;
    for (const [other, count] of row) {
      const to = ends.get(other)?.first;
      if (from === undefined || to === undefined) continue;
      all += count;
      if (from.id !== to.id && from.hand === to.hand && from.finger === to.finger) same += count;
    }
  }
  return all === 0 ? 0 : same / all;
}

const NOWHERE: Pick<Route, 'steps'> = { steps: [] };
