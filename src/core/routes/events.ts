import type { KeyEvent } from '../base/key-event.ts';
import { chordsOf, timingOf, timingOfChord } from '../keymap/timing.ts';
import type { Keymap } from '../keymap/types.ts';
import { type Plan, SHORTEST_MS } from './plan.ts';
import type { Move, State } from './state.ts';

/** ms between two moves, where no threshold asks for less. */
const STEP_MS = 10;
/** What is waited out is waited out by this much: a timer at T is handled after the events at T (rule I4). */
const BEYOND_MS = 1;
/** Several events must fit into every threshold of the keymap. */
const PARTS = 16;

/** The moves that led to a state, first to last. */
export function movesTo(end: State): readonly Move[] {
  const moves: Move[] = [];
  for (let state: State | null = end; state !== null; state = state.from) {
    if (state.move !== null) moves.push(state.move);
  }
  return moves.reverse();
}

/** The presses and releases of a way, from t = 0 to all keys up, as the engine is to play them. */
export function eventsOf(plan: Plan, end: State, step = stepOf(plan.keymap)): readonly KeyEvent[] {
  const hands = new Hands(plan, step);
  for (const move of movesTo(end)) {
    if (move.kind === 'release') hands.release(move.keys);
    else hands.press(move);
  }
  hands.releaseAll();
  return hands.events;
}

/** A step so short that no threshold of the keymap is reached by accident, ms. */
function stepOf(keymap: Keymap): number {
  const timings = keymap.layers.flatMap((layer) =>
    Object.values(layer.places).map((binding) => timingOf(keymap, binding)),
  );
  const thresholds = [
    ...timings.flatMap(({ holdAfterMs, quietBeforeMs, againWithinMs }) => [
      holdAfterMs,
      quietBeforeMs,
      againWithinMs,
    ]),
    ...chordsOf(keymap).flatMap((chord) => {
      const { holdAfterMs, againWithinMs } = timingOfChord(keymap, chord);
      const ofBoth = chord.hold === undefined ? [] : [holdAfterMs, againWithinMs];
      return [chord.windowMs, chord.quietBeforeMs ?? 0, ...ofBoth];
    }),
  ].filter((ms) => ms >= SHORTEST_MS);
  return Math.min(STEP_MS, ...thresholds.map((ms) => ms / PARTS));
}

/** Two hands that make moves in time. */
class Hands {
  readonly events: KeyEvent[] = [];
  readonly #plan: Plan;
  readonly #step: number;
  readonly #down: (readonly number[])[] = [];
  #now = 0;
  #lastDown: number | null = null;
  /** The next press comes within this time, ms: half of what the open key allows. */
  #within = Number.POSITIVE_INFINITY;

  constructor(plan: Plan, step: number) {
    this.#plan = plan;
    this.#step = step;
  }

  press(move: Move & { readonly kind: 'press' }): void {
    this.#wait(move);
    const [last] = move.keys.slice(-1);
    for (const key of move.keys) {
      if (key === last && move.spread !== null) this.#now += move.spread + this.#pastSpread(move);
      this.#add(key, 'down');
    }
    if (move.lets.length > 0) this.#letGo(move.lets, this.#dwell(move) / 2);
    this.#lastDown = this.#now;
    this.#within = Number.POSITIVE_INFINITY;
    if (move.kept) {
      this.#down.push(move.keys);
      if (move.settles === 'by-next' && move.keptTap) this.#within = move.openMs / 2;
      return;
    }
    this.#now += move.settles === 'by-time' ? move.holdAfterMs + BEYOND_MS : this.#dwell(move);
    for (const key of move.keys) this.#add(key, 'up');
  }

  /** Lets go of an open key, soon enough for it to be a tap: it went down at the latest press, half its time ago at most. The key inside must be a tap too. */
  #letGo(keys: readonly number[], most: number): void {
    const left = this.#lastDown === null ? 0 : this.#lastDown + 2 * this.#within - this.#now;
    this.release(keys, Math.min(most, left / 2));
  }

  release(keys: readonly number[], after = this.#step): void {
    this.#now += after;
    for (const key of keys) this.#add(key, 'up');
    const at = this.#down.findIndex((held) => held === keys || held.join() === keys.join());
    if (at >= 0) this.#down.splice(at, 1);
  }

  releaseAll(): void {
    for (const keys of this.#down.toReversed()) {
      this.#now += this.#step;
      for (const key of keys) this.#add(key, 'up');
    }
  }

  #wait({ before, quiet, afterRelease }: Move & { readonly kind: 'press' }): void {
    if (this.#lastDown === null) return;
    const soon = this.#now + Math.min(this.#step, this.#within);
    const beyond = Math.min(BEYOND_MS, (2 * this.#within - before) / 2);
    const late = before > 0 ? this.#lastDown + before + beyond : 0;
    this.#now = Math.max(
      soon,
      late,
      this.#lastDown + quiet,
      afterRelease > 0 ? this.#now + afterRelease + BEYOND_MS : 0,
    );
  }

  /** How long a tap lasts: within the shortest hold after that the key has anywhere. */
  #dwell({ keys, chord }: Move & { readonly kind: 'press' }): number {
    if (chord !== null) {
      return chord.binding.both ? Math.min(this.#step, chord.binding.holdAfterMs / 2) : this.#step;
    }
    return Math.min(this.#step, ...keys.map((key) => this.#shortestHold(key) / 2));
  }

  #shortestHold(key: number): number {
    const all = this.#plan.bindings.flatMap((layer) => layer[key]?.holdAfterMs ?? []);
    return Math.min(Number.POSITIVE_INFINITY, ...all);
  }

  #pastSpread({ chord, spread }: Move & { readonly kind: 'press' }): number {
    const from = spread ?? 0;
    return Math.min(BEYOND_MS, ((chord?.chord.windowMs ?? from) - from) / 2);
  }

  #add(key: number, type: 'down' | 'up'): void {
    this.events.push({ t: this.#now, key: this.#plan.keys[key]?.id ?? '', type });
  }
}
