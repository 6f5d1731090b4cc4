import type { Act, ModifierSet } from './act.ts';
import { actsOfBinding, type LayerSet, type Plan, type PlannedBinding } from './plan.ts';

/** A place of a design that sends strokes. */
export interface StrokePlace {
  readonly act: Extract<Act, { kind: 'type' }>;
  /** One of these layers must be on. */
  readonly live: LayerSet;
  /** Layers that must be off, since they lie over it. */
  readonly covered: LayerSet;
  /** Keys that are pressed for it. */
  readonly keys: number;
}

/** Where a design sends strokes from, and where its layers and modifiers are turned on; only what can be reached at all. */
export interface StrokePlaces {
  /** By the number of the code that the first stroke is on. */
  readonly typing: ReadonlyMap<number, readonly StrokePlace[]>;
  /** Per layer: the layers on which it can be turned on. */
  readonly entries: readonly LayerSet[];
  /** Per layer: those that it waits for, 0 where it waits for none, all where one of those waits for others in turn. */
  readonly parts: readonly LayerSet[];
  /** Actions that turn on modifiers. */
  readonly modifiers: readonly {
    readonly act: Act & { readonly set: ModifierSet };
    readonly live: LayerSet;
  }[];
  /** The most modifiers that one action turns on. */
  readonly mostModifiers: number;
}

/** All layers, as a set. */
export const ALL: LayerSet = -1;

interface Placed {
  readonly act: Act;
  readonly live: LayerSet;
  readonly covered: LayerSet;
  readonly keys: number;
}

/** Looks a design's places through, once for all needs. */
export function strokePlacesOf(plan: Plan): StrokePlaces {
  const all = [...placed(plan)];
  const reached = reachedLayers(plan, all);
  const here = all.filter(({ live }) => (live & reached) !== 0);
  const entries = plan.bindings.map((_, layer) =>
    here.reduce((set, { act, live }) => (act.kind === 'layer' && act.layer === layer ? set | live : set), 0),
  );
  const typing = new Map<number, StrokePlace[]>();
  const modifiers: { act: Act & { readonly set: ModifierSet }; live: LayerSet }[] = [];
  for (const { act, live, covered, keys } of here) {
    if (act.kind === 'modifiers' || act.kind === 'modifier') modifiers.push({ act, live });
    if (act.kind === 'type' && act.signs.length > 0) addPlace(typing, { act, live, covered, keys });
  }
  const mostModifiers = Math.max(1, ...modifiers.map(({ act }) => countOf(act.set)));
  return { typing, entries, parts: partsOf(plan), modifiers, mostModifiers };
}

/** How many are in a set. */
export function countOf(set: number): number {
  let count = 0;
  for (let rest = set; rest !== 0; rest &= rest - 1) count += 1;
  return count;
}

function addPlace(typing: Map<number, StrokePlace[]>, place: StrokePlace): void {
  const code = (place.act.signs[0] ?? 0) >> 8;
  const known = typing.get(code);
  if (known === undefined) typing.set(code, [place]);
  else known.push(place);
}

function* placed(plan: Plan): Generator<Placed> {
  for (const [layer, bindings] of plan.bindings.entries()) {
    for (const [key, binding] of bindings.entries()) {
      if (binding === null) continue;
      yield* placedActs(binding, 1 << layer, coverOf(plan, layer, key), 1);
    }
  }
  for (const { binding, live, keys } of plan.chords) yield* placedActs(binding, live, 0, keys.length);
}

function* placedActs(
  binding: PlannedBinding,
  live: LayerSet,
  covered: LayerSet,
  keys: number,
): Generator<Placed> {
  for (const act of actsOfBinding(binding)) yield { act, live, covered, keys };
}

/** The layers over a place that have something of their own on its key. */
function coverOf(plan: Plan, layer: number, key: number): LayerSet {
  let set: LayerSet = 0;
  for (let over = layer + 1; over < plan.bindings.length; over++) {
    const above = plan.bindings[over]?.[key] ?? null;
    if (above !== null) set |= 1 << over;
  }
  return set;
}

/** The layers that can be on at all. */
function reachedLayers(plan: Plan, all: readonly Placed[]): LayerSet {
  let reached: LayerSet = 1;
  for (let before = 0; before !== reached; ) {
    before = reached;
    for (const { act, live } of all) {
      if (act.kind === 'layer' && (live & reached) !== 0) reached |= 1 << act.layer;
    }
    for (const { layer, all: lower } of plan.conditions) {
      if ((lower & ~reached) === 0) reached |= 1 << layer;
    }
  }
  return reached;
}

function partsOf(plan: Plan): readonly LayerSet[] {
  const waiting = plan.conditions.reduce((set, { layer }) => set | (1 << layer), 0);
  return plan.bindings.map((_, number) => {
    const condition = plan.conditions.find(({ layer }) => layer === number);
    if (condition === undefined) return 0;
    return (condition.all & waiting) !== 0 ? ALL : condition.all;
  });
}
