import type { HostLayout } from '../host/host-layout.ts';
import { chordsOf, type EffectiveTiming, timingOf, timingOfChord } from '../keymap/timing.ts';
import type { Binding, BoardKey, Chord, Keymap, ShiftedAction } from '../keymap/types.ts';
import { type Act, actOf, shiftedActOf } from './act.ts';

/** Layers as bits: bit i stands for the i-th layer, the base layer being bit 0. */
export type LayerSet = number;

/** A binding, ready for the search. Times in ms. */
export interface PlannedBinding extends EffectiveTiming {
  readonly tap: Act | null;
  /** What is pressed in place of the tap while Shift is on; null where it is pressed as ever. */
  readonly shifted: Act | null;
  readonly hold: Act | null;
  /** Both a tap and a hold, so that time decides. */
  readonly both: boolean;
}

/** A chord, ready for the search: keys by number. */
export interface PlannedChord {
  readonly chord: Chord;
  readonly keys: readonly number[];
  readonly live: LayerSet;
  readonly quietBeforeMs: number;
  readonly act: Act;
  /** What settles its firings: its act as the tap, with what comes in its place under Shift, and its hold. */
  readonly binding: PlannedBinding;
  /** It is not live everywhere, or another chord of the same keys may stand in its way: which layer is the highest matters. */
  readonly needsItsLayers: boolean;
}

/** A design by numbers. */
export interface Plan {
  readonly keymap: Keymap;
  readonly keys: readonly BoardKey[];
  /** Per layer and key. */
  readonly bindings: readonly (readonly (PlannedBinding | null)[])[];
  /** In document order. */
  readonly chords: readonly PlannedChord[];
  /** Per key: the chords that it is part of. */
  readonly chordsOfKey: readonly (readonly PlannedChord[])[];
  /** Per key: whether it matters that it was tapped, since one of its bindings has `again within`. */
  readonly remembers: readonly boolean[];
  /** The codes of strokes that stand for a tap under Shift (rule A8). */
  readonly shifted: ReadonlySet<number>;
  /** Layers that are on while others are, lowest first. */
  readonly conditions: readonly { readonly layer: number; readonly all: LayerSet }[];
  /** What each key does while a set of layers is on; made when first asked for. */
  readonly views: Map<LayerSet, View>;
}

/** The bindings in force while a set of layers is on (rule S12), by key. */
export type View = readonly (PlannedBinding | null)[];

/** Numbers a design for the search. Bindings and chords that refer to keys or layers that do not exist are left out. */
export function planOf(keymap: Keymap, host: HostLayout): Plan {
  const keys = keymap.board.keys;
  const keyNumbers = new Map(keys.map((key, number) => [key.id, number]));
  const layerNumbers = new Map(keymap.layers.map((layer, number) => [layer.id, number]));
  const bindings = keymap.layers.map((layer) =>
    keys.map((key) => {
      const binding = Object.hasOwn(layer.places, key.id) ? layer.places[key.id] : undefined;
      return binding === undefined ? null : plannedBinding(keymap, host, binding, layerNumbers);
    }),
  );
  const chords = chordsOf(keymap).flatMap((chord) => {
    const numbers = chord.keys.flatMap((id) => keyNumbers.get(id) ?? []);
    if (numbers.length !== chord.keys.length) return [];
    const live = setOf(chord.layers?.map((id) => layerNumbers.get(id)) ?? keymap.layers.map((_, at) => at));
    const act = actOf(chord.action, host, layerNumbers);
    const needsItsLayers = chord.layers !== undefined || sharesKeys(keymap, chord);
    const quietBeforeMs = counting(chord.quietBeforeMs ?? 0);
    const binding = chordBinding(keymap, host, chord, act, layerNumbers);
    return [{ chord, keys: numbers, live, quietBeforeMs, act, binding, needsItsLayers }];
  });
  const conditions = keymap.layers.flatMap(({ onWhile }, number) => {
    // A layer that waits for one that does not exist never comes on.
    if (onWhile === undefined || onWhile.some((id) => !layerNumbers.has(id))) return [];
    return [{ layer: number, all: setOf(onWhile.map((id) => layerNumbers.get(id))) }];
  });
  const chordsOfKey = keys.map((_, number) => chords.filter((chord) => chord.keys.includes(number)));
  const remembers = keys.map((_, key) => bindings.some((layer) => (layer[key]?.againWithinMs ?? 0) > 0));
  const shifted = shiftedCodes([...bindings.flat(), ...chords.map(({ binding }) => binding)]);
  return { keymap, keys, bindings, chords, chordsOfKey, remembers, shifted, conditions, views: new Map() };
}

function sharesKeys(keymap: Keymap, chord: Chord): boolean {
  return chordsOf(keymap).some(
    (other) =>
      other !== chord &&
      other.keys.length === chord.keys.length &&
      other.keys.every((key) => chord.keys.includes(key)),
  );
}

function setOf(numbers: readonly (number | undefined)[]): LayerSet {
  return numbers.reduce<LayerSet>((set, number) => (number === undefined ? set : set | (1 << number)), 0);
}

/** Shorter times than this are no times for a hand: nothing is made to fit into them, ms. */
export const SHORTEST_MS = 1;

/** Between two presses more than this passes anyway, ms. */
const ANY_GAP_MS = 0.05;

/** A quiet time, none where it passes anyway. */
function counting(quietMs: number): number {
  return quietMs < ANY_GAP_MS ? 0 : quietMs;
}

function plannedBinding(
  keymap: Keymap,
  host: HostLayout,
  binding: Binding,
  layerNumbers: ReadonlyMap<string, number>,
): PlannedBinding {
  const act = (action: Binding['tap']) => (action === undefined ? null : actOf(action, host, layerNumbers));
  const both = binding.tap !== undefined && binding.hold !== undefined;
  const timing = timingOf(keymap, binding);
  const quietBeforeMs = counting(timing.quietBeforeMs);
  const shifted = shiftedOf(binding.onShift, host);
  return { tap: act(binding.tap), shifted, hold: act(binding.hold), both, ...timing, quietBeforeMs };
}

function shiftedOf(onShift: ShiftedAction | undefined, host: HostLayout): Act | null {
  return onShift === undefined ? null : shiftedActOf(onShift, host);
}

function chordBinding(
  keymap: Keymap,
  host: HostLayout,
  chord: Chord,
  tap: Act,
  layerNumbers: ReadonlyMap<string, number>,
): PlannedBinding {
  const hold = chord.hold === undefined ? null : actOf(chord.hold, host, layerNumbers);
  const shifted = shiftedOf(chord.onShift, host);
  return { tap, shifted, hold, both: hold !== null, ...timingOfChord(keymap, chord) };
}

/** What a binding can do: its tap, what stands for it under Shift, its hold. */
export function* actsOfBinding({ tap, shifted, hold }: PlannedBinding): Generator<Act> {
  if (tap !== null) yield tap;
  if (shifted !== null) yield shifted;
  if (hold !== null) yield hold;
}

/** The codes of strokes that stand for a tap under Shift: a need of them may want Shift to be on. */
function shiftedCodes(bindings: readonly (PlannedBinding | null)[]): ReadonlySet<number> {
  const signs = bindings.flatMap((one) => (one?.shifted?.kind === 'type' ? one.shifted.signs : []));
  return new Set(signs.map((sign) => sign >> 8));
}

/** The layers that are on when some are turned on: those, the base, and the ones whose condition is met (rule A4). */
export function layersOn(plan: Plan, turnedOn: LayerSet): LayerSet {
  let on = turnedOn | 1;
  for (const { layer, all } of plan.conditions) {
    if ((on & all) === all) on |= 1 << layer;
  }
  return on;
}

/** The number of the highest layer that is on: the one on which chords are live (rule G1). */
export function highestOf(on: LayerSet): number {
  return 31 - Math.clz32(on);
}

/** What each key does while these layers are on. */
export function viewOf(plan: Plan, on: LayerSet): View {
  const known = plan.views.get(on);
  if (known !== undefined) return known;
  const view = plan.keys.map((_, key) => {
    for (let rest = on; rest !== 0; ) {
      const layer = highestOf(rest);
      const binding = plan.bindings[layer]?.[key] ?? null;
      if (binding !== null) return binding;
      rest &= ~(1 << layer);
    }
    return null;
  });
  plan.views.set(on, view);
  return view;
}
