import fc from 'fast-check';
import type { Binding, Chord, Keymap, ShiftedAction, Timing } from '../../../src/core/keymap/types.ts';
import { ALL_ACTION_KINDS, actionArbitrary, CHARS } from './keymap-actions.ts';
import { durationArbitrary, type KeymapChoice, keymapArbitrary } from './keymap-arbitrary.ts';

/** Which of the later fields a random keymap gets beside those that `keymapArbitrary` gives; all where nothing is said. */
export interface GrownChoice extends KeymapChoice {
  readonly onShift?: boolean;
  readonly chordHolds?: boolean;
  readonly chordRelease?: boolean;
  readonly tapIfAlone?: boolean;
}

function shiftedArbitrary(chars: readonly string[]): fc.Arbitrary<ShiftedAction> {
  const typed = actionArbitrary({ kinds: ['key', 'char', 'text', 'nothing'], layers: [], chars });
  return typed.map((action): ShiftedAction => {
    const isModifier = action.do === 'key' && /^(?:Shift|Control|Alt|Meta)/.test(action.code);
    const fits = action.do === 'key' || action.do === 'char' || action.do === 'text';
    return fits && !isModifier ? action : { do: 'nothing' };
  });
}

const aloneArbitrary: fc.Arbitrary<Pick<Timing, 'tapIfAlone'>> = fc.oneof(
  { weight: 2, arbitrary: fc.constant({}) },
  fc.record({ tapIfAlone: fc.boolean() }),
);

const chordTiming: fc.Arbitrary<Partial<Chord>> = fc.record(
  {
    holdAfterMs: durationArbitrary,
    holdBy: fc.constantFrom('time-only' as const, 'press-inside' as const, 'tap-inside' as const),
    againWithinMs: durationArbitrary,
  },
  { requiredKeys: [] },
);

interface Draws {
  readonly alone: readonly Pick<Timing, 'tapIfAlone'>[];
  readonly shifted: readonly (ShiftedAction | null)[];
  readonly release: readonly (Chord['release'] | null)[];
  readonly holds: readonly (Partial<Chord> | null)[];
}

/** As many draws as are dealt out in turn to bindings and chords. */
const MOST = 8;

function some<Value>(of: fc.Arbitrary<Value>, wanted: boolean): fc.Arbitrary<(Value | null)[]> {
  const each = wanted ? fc.option(of, { freq: 2 }) : fc.constant(null);
  return fc.array(each, { minLength: MOST, maxLength: MOST });
}

function grown(keymap: Keymap, { alone, shifted, release, holds }: Draws): Keymap {
  let turn = 0;
  const next = <Value>(draws: readonly Value[]): Value | undefined => draws[turn++ % MOST];
  const grownBinding = (binding: Binding): Binding => {
    const onShift = next(shifted);
    return { ...binding, ...(onShift && binding.tap ? { onShift } : {}), ...next(alone) };
  };
  const grownChord = (chord: Chord): Chord => {
    const [onShift, up] = [next(shifted), next(release)];
    return {
      ...chord,
      ...next(holds),
      ...(onShift ? { onShift } : {}),
      ...(up ? { release: up } : {}),
      ...next(alone),
    };
  };
  return {
    ...keymap,
    ...(keymap.timing ? { timing: { ...keymap.timing, ...next(alone) } } : {}),
    layers: keymap.layers.map((layer) => ({
      ...layer,
      places: Object.fromEntries(
        Object.entries(layer.places).map(([key, binding]) => [key, grownBinding(binding)]),
      ),
    })),
    ...(keymap.chords ? { chords: keymap.chords.map(grownChord) } : {}),
  };
}

/**
 * Random valid keymaps that hold, besides, results under Shift, chords that are released at their last key or have a
 * hold, keys that give their tap when held alone, repeat and Shift for one word.
 */
export function grownKeymapArbitrary(wanted: GrownChoice = {}): fc.Arbitrary<Keymap> {
  const { onShift = true, chordHolds = true, chordRelease = true, tapIfAlone = true, ...choice } = wanted;
  const kinds = choice.kinds ?? ALL_ACTION_KINDS;
  return keymapArbitrary({ ...choice, kinds }).chain((keymap) => {
    const layers = keymap.layers.slice(1).map(({ id }) => id);
    const hold = actionArbitrary({ kinds, layers, chars: choice.chars ?? CHARS });
    const timed = choice.timing === false ? fc.constant({}) : chordTiming;
    const holding = fc.tuple(hold, timed).map(([action, timing]) => ({ hold: action, ...timing }));
    const alone = tapIfAlone ? aloneArbitrary : fc.constant({});
    const draws: fc.Arbitrary<Draws> = fc.record({
      alone: fc.array(alone, { minLength: MOST, maxLength: MOST }),
      shifted: some(shiftedArbitrary(choice.chars ?? CHARS), onShift),
      release: some(fc.constantFrom('first-up' as const, 'last-up' as const), chordRelease),
      holds: some(holding, chordHolds),
    });
    return draws.map((all) => grown(keymap, all));
  });
}
