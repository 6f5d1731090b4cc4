import fc from 'fast-check';
import type { KeyEvent } from '../../../src/core/base/key-event.ts';
import { chordsOf, timingOf } from '../../../src/core/keymap/timing.ts';
import type { KeyId, Keymap } from '../../../src/core/keymap/types.ts';
import { type KeymapChoice, keymapArbitrary } from './keymap-arbitrary.ts';

/** A design and a stream that can be played on it. Prints itself as the contents of two files. */
export interface PlayableCase {
  readonly keymap: Keymap;
  readonly events: readonly KeyEvent[];
}

/** One event without a keymap: numbers that are taken modulo what there is to choose from. */
interface Step {
  readonly key: number;
  /** The event comes a duration after the event that many places back, or at once where that is past already. */
  readonly back: number;
  readonly duration: number;
  readonly offset: number;
}

/** Ordinary gaps, ms; all multiples of a quarter, so that sums of them are exact. */
const GAPS = [0, 0.25, 1, 12, 30.5, 90] as const;
const OFFSETS = [0, 0, 0, -0.25, 0.25] as const;

const stepArbitrary: fc.Arbitrary<Step> = fc.record({
  key: fc.nat(999),
  back: fc.oneof({ weight: 3, arbitrary: fc.constant(1) }, fc.integer({ min: 1, max: 6 })),
  duration: fc.nat(999),
  offset: fc.constantFrom(...OFFSETS),
});

/** Every duration in ms that the design compares times with. */
export function thresholdsOf(keymap: Keymap): readonly number[] {
  const bindings = keymap.layers.flatMap((layer) => Object.values(layer.places));
  const timings = [timingOf(keymap), ...bindings.map((binding) => timingOf(keymap, binding))];
  const chords = chordsOf(keymap).flatMap(({ windowMs, quietBeforeMs = 0, holdAfterMs }) =>
    holdAfterMs === undefined ? [windowMs, quietBeforeMs] : [windowMs, quietBeforeMs, holdAfterMs],
  );
  const ofBindings = timings.flatMap((one) => [one.holdAfterMs, one.quietBeforeMs, one.againWithinMs]);
  return [...new Set([...chords, ...ofBindings])].toSorted((a, b) => a - b);
}

/** Half of the durations are thresholds, the others ordinary gaps: boundaries are hit exactly, and just missed. */
function timeOf(step: Step, events: readonly KeyEvent[], thresholds: readonly number[]): number {
  const pool = step.duration % 2 === 0 ? thresholds : GAPS;
  const duration = (pool[(step.duration >> 1) % pool.length] ?? 0) + (pool === GAPS ? 0 : step.offset);
  const from = events.at(-Math.min(step.back, events.length))?.t ?? 0;
  return Math.max(events.at(-1)?.t ?? 0, from + duration);
}

/** Each step moves its key the other way, so any choice of steps is a valid stream; in the end all keys come up. */
function eventsOf(keymap: Keymap, steps: readonly Step[], last: readonly Step[]): KeyEvent[] {
  const keys = keymap.board.keys.map((key) => key.id);
  const thresholds = thresholdsOf(keymap);
  const down = new Set<KeyId>();
  const events: KeyEvent[] = [];
  const move = (key: KeyId, step: Step): void => {
    const type = down.delete(key) ? 'up' : 'down';
    if (type === 'down') down.add(key);
    events.push({ t: timeOf(step, events, thresholds), key, type });
  };
  for (const step of steps) {
    const key = keys[step.key % keys.length];
    if (key !== undefined) move(key, step);
  }
  for (const [index, key] of [...down].entries()) {
    const step = last[index % last.length];
    if (step !== undefined) move(key, step);
  }
  return events;
}

const stepsArbitrary = (most: number) =>
  fc.tuple(
    fc.array(stepArbitrary, { maxLength: most, size: 'max' }),
    fc.array(stepArbitrary, { minLength: 3, maxLength: 3 }),
  );

/** Valid streams over a design's keys that end with all keys up; times lie at and about its thresholds. */
export function streamArbitrary(keymap: Keymap, most = 40): fc.Arbitrary<KeyEvent[]> {
  return stepsArbitrary(most).map(([steps, last]) => eventsOf(keymap, steps, last));
}

/** Random designs, each with a stream; both shrink on their own. `change` may simplify the design beforehand. */
export function playableArbitrary(
  wanted: KeymapChoice = {},
  most = 40,
  change: (keymap: Keymap) => Keymap = (keymap) => keymap,
): fc.Arbitrary<PlayableCase> {
  return playableOn(keymapArbitrary(wanted), most, change);
}

/** The same for designs of any arbitrary. */
export function playableOn(
  keymaps: fc.Arbitrary<Keymap>,
  most = 40,
  change: (keymap: Keymap) => Keymap = (keymap) => keymap,
): fc.Arbitrary<PlayableCase> {
  return fc.tuple(keymaps, stepsArbitrary(most)).map(([made, [steps, last]]) => {
    const keymap = change(made);
    const events = eventsOf(keymap, steps, last);
    const files = () => `keymap.json:\n${JSON.stringify(keymap)}\nevents.json:\n${JSON.stringify(events)}`;
    return { keymap, events, [fc.toStringMethod]: files };
  });
}

/** The design with all its durations rounded to quarters of a ms: then sums with times in quarters are exact. */
export function inQuarters(keymap: Keymap): Keymap {
  const rounded = (name: string, value: unknown): unknown =>
    name.endsWith('Ms') && typeof value === 'number' ? Math.round(value * 4) / 4 : value;
  const copy: Keymap = JSON.parse(JSON.stringify(keymap, rounded));
  return copy;
}
