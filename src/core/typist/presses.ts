import { bindingUnder, type Compiled, type CompiledBinding, highestLayer } from '../engine/compiled.ts';
import type { Route, Step } from '../routes/types.ts';

/** One thing the typist does on the board for a character: a press of a key, or of a chord's keys together. */
export interface Press {
  /** Keys by their place on the board. */
  readonly keys: readonly number[];
  /** The chord that is meant, by its place in the document; -1 for none. */
  readonly chord: number;
  /** Stays down while the next presses are made. */
  readonly held: boolean;
  /** Meant as the hold of a key, or of a chord, that has both. */
  readonly asHold: boolean;
  /** The highest layer that is on. */
  readonly layer: number;
  /** The layer on which the key's binding lies; -1 for a chord. */
  readonly place: number;
  /** The binding, where it is both tap and hold. */
  readonly both: CompiledBinding | null;
}

/** The presses of a route, in order; layers are followed as the steps turn them on. */
export function pressesOf(compiled: Compiled, route: Route): readonly Press[] {
  const presses: Press[] = [];
  const held = new Map<number, number>();
  let latched = 0;
  let locked = 0;
  for (const step of route.steps) {
    const keys = step.keys.map((key) => compiled.keyNumbers.get(key) ?? 0);
    if (step.move === 'release') {
      for (const key of keys) held.delete(key);
      continue;
    }
    const on = closed(
      compiled,
      [...held.values()].reduce((mask, bit) => mask | bit, 1 | latched | locked),
    );
    const press = pressOf(compiled, on, step, keys);
    presses.push(press);
    const action = actionOf(compiled, on, press, step);
    latched = 0;
    const bit = action === null ? 0 : 1 << action.target;
    if (action?.kind === 'layer-held') held.set(keys[0] ?? 0, bit);
    if (action?.kind === 'layer-latch') latched = bit;
    if (action?.kind === 'layer-lock') locked ^= bit;
  }
  return presses;
}

/** A set of layers with those that are on while others are. */
function closed(compiled: Compiled, layers: number): number {
  return compiled.onWhile.reduce(
    (on, needed, layer) => (needed !== 0 && (on & needed) === needed ? on | (1 << layer) : on),
    layers,
  );
}

function pressOf(compiled: Compiled, on: number, step: Step, keys: readonly number[]): Press {
  const isChord = step.move !== 'release' && step.chord !== undefined;
  const chord = isChord ? compiled.chords.findIndex(({ id }) => id === step.chord) : -1;
  const [key = 0] = keys;
  const binding = isChord ? null : bindingUnder(compiled, on, key);
  const both = binding !== null && binding.tap !== null && binding.hold !== null ? binding : null;
  const hasBoth = both !== null || (compiled.chords[chord]?.binding.hold ?? null) !== null;
  const asHold = hasBoth && step.move !== 'release' && step.side === 'hold';
  const bound = (compiled.boundOn[key] ?? 0) & on;
  const place = isChord || bound === 0 ? -1 : highestLayer(bound);
  return { keys, chord, held: step.move === 'hold', asHold, layer: highestLayer(on), place, both };
}

function actionOf(compiled: Compiled, on: number, press: Press, step: Step) {
  const [key = 0] = press.keys;
  const subject = press.chord >= 0 ? compiled.keyIds.length + press.chord : key;
  const binding = bindingUnder(compiled, on, subject);
  const side = step.move !== 'release' && step.side === 'hold' ? 'hold' : 'tap';
  return binding?.[side] ?? binding?.tap ?? binding?.hold ?? null;
}
