import { type ModifierSet, SHIFTS, type Sign } from './act.ts';
import type { GoalHit, Goals } from './goals.ts';
import { type LayerSet, layersOn, type Plan } from './plan.ts';
import { ALL, countOf, type StrokePlace, type StrokePlaces } from './stroke-places.ts';

/** A way to make the next stroke of a need, with what it asks for. */
interface Edge {
  readonly keys: number;
  readonly live: LayerSet;
  covered: LayerSet;
  /** Modifiers that must be on for it. */
  readonly missing: ModifierSet;
  /** Modifiers that may be on. */
  readonly around: ModifierSet;
  /** Either Shift must be on (rule A8). */
  readonly underShift: boolean;
  /** The node that it leads to; -1 where it only completes needs. */
  readonly next: number;
  readonly needs: Set<number>;
  /** The most presses that any of its needs may take. */
  most: number;
}

/** What is turned on, as far as presses are reckoned here, and what it took: layers without those that wait for others, and modifiers. */
interface Reached {
  readonly price: number;
  readonly layers: LayerSet;
  readonly modifiers: ModifierSet;
}

/** What is on, as one number. */
function keyOf({ layers, modifiers }: Reached, before: ModifierSet | null): number {
  return ((layers >>> 0) * 256 + modifiers) * 512 + (before ?? 256);
}

const NEVER = Number.NEGATIVE_INFINITY;

/**
 * How many presses needs take at the least, reckoned as if nothing ever had to be waited for, every key could be let go
 * at any time and nothing had to be turned off in the end. A state from which no need can be had within the presses that
 * it is known or supposed to take is of no use.
 */
export class FewestPresses {
  readonly #plan: Plan;
  readonly #goals: Goals;
  readonly #places: StrokePlaces;
  readonly #edges: readonly (readonly Edge[])[];
  #bareMost = NEVER;
  /** Answers by node, then by layers, modifiers and what may have been on before. */
  #known: Map<number, number>[] = [];

  constructor(plan: Plan, goals: Goals, places: StrokePlaces) {
    this.#plan = plan;
    this.#goals = goals;
    this.#places = places;
    this.#edges = goals.nodes.map((_, node) => this.#edgesAt(node));
  }

  /** Per need: what it takes at least from rest. Needs that cannot be typed at all do not stand here. */
  fromRest(): Map<number, number> {
    const least = new Map<number, number>();
    const lower = (need: number, presses: number) => {
      if (presses < (least.get(need) ?? Number.POSITIVE_INFINITY)) least.set(need, presses);
    };
    for (const [set, need] of this.#goals.bare) {
      for (const { act, live } of this.#places.modifiers) {
        if (act.set === set) lower(need, (act.kind === 'modifier' ? 2 : 1) + this.#layerPrice(live, 1, true));
      }
    }
    const walked = this.#goals.nodes.map(() => new Map<number, number>());
    const walk = (node: number, from: Reached, before: ModifierSet | null) => {
      const key = keyOf(from, before);
      if ((walked[node]?.get(key) ?? Number.POSITIVE_INFINITY) <= from.price) return;
      walked[node]?.set(key, from.price);
      for (const edge of this.#edges[node] ?? []) {
        const reached = this.#along(edge, node, from, before);
        if (reached === null) continue;
        const price = from.price + reached.price;
        for (const need of edge.needs) lower(need, price);
        if (edge.next > 0) walk(edge.next, { ...reached, price }, edge.around);
      }
    };
    walk(0, { price: 0, layers: 0, modifiers: 0 }, null);
    return least;
  }

  /** Only these needs count from now on, each within so many presses. */
  within(limits: ReadonlyMap<number, number>): void {
    this.#known = this.#goals.nodes.map(() => new Map());
    this.#bareMost = NEVER;
    for (const need of this.#goals.bare.values())
      this.#bareMost = Math.max(this.#bareMost, limits.get(need) ?? NEVER);
    for (const edge of this.#edges.flat()) {
      edge.most = NEVER;
      for (const need of edge.needs) edge.most = Math.max(edge.most, limits.get(need) ?? NEVER);
    }
  }

  /** Whether a modifier by itself may be had with so many presses. */
  mayBeBare(presses: number): boolean {
    return presses <= this.#bareMost;
  }

  /** How many presses may have been made at the most, for a need to be had within its limit from a node on. */
  mostAt(node: number, layers: LayerSet, modifiers: ModifierSet): number {
    return this.#mostAt(node, { price: 0, layers, modifiers }, null);
  }

  #mostAt(node: number, from: Reached, before: ModifierSet | null): number {
    const key = keyOf(from, before);
    const known = this.#known[node]?.get(key);
    if (known !== undefined) return known;
    let most = node === 0 ? this.#bareMost - 1 : NEVER;
    for (const edge of this.#edges[node] ?? []) {
      const reached = this.#along(edge, node, from, before);
      if (reached === null) continue;
      const further = edge.next > 0 ? this.#mostAt(edge.next, reached, edge.around) : NEVER;
      most = Math.max(most, Math.max(edge.most, further) - reached.price);
    }
    this.#known[node]?.set(key, most);
    return most;
  }

  /**
   * What a way to make a stroke takes at least, and what may be on after it; null where it cannot be had. `before`: the
   * modifiers that may have been on at the stroke before, null where what is on now is all there is.
   */
  #along(edge: Edge, node: number, from: Reached, before: ModifierSet | null): Reached | null {
    // Before the first stroke, a modifier let go would be a bare tap.
    if (node === 0 && (from.modifiers & ~edge.around) !== 0) return null;
    const on = layersOn(this.#plan, from.layers);
    const gained = (on & edge.live) === 0 ? this.#gained(edge.live, before === null) : 0;
    const missing = edge.missing & ~from.modifiers;
    const isUnder = !edge.underShift || ((from.modifiers | missing) & SHIFTS) !== 0;
    const sources = this.#sourcesOf(missing & ~(before ?? 0));
    const isFar = (sources & (on | gained)) === 0;
    const { mostModifiers } = this.#places;
    const price =
      edge.keys +
      this.#layerPrice(edge.live, on, before === null) +
      Math.ceil(countOf(missing) / mostModifiers) +
      (isFar ? 1 : 0) +
      (isUnder ? 0 : 1);
    // An action with several modifiers may have brought any that are no hindrance.
    const brought = mostModifiers > 1 ? 255 : missing | (isUnder ? 0 : SHIFTS);
    const layers = from.layers | gained | (isFar ? this.#gained(sources, false) : 0);
    return { price, layers: layers & ~edge.covered, modifiers: (from.modifiers | brought) & edge.around };
  }

  /** The layers on which some of these modifiers are turned on; all where none is wanted. */
  #sourcesOf(missing: ModifierSet): LayerSet {
    if (missing === 0) return ALL;
    let sources: LayerSet = 0;
    for (const { act, live } of this.#places.modifiers) if ((act.set & missing) !== 0) sources |= live;
    return sources;
  }

  /** Presses for one of these layers to be on; those for a layer further away may have been made before, but for the next stroke. */
  #layerPrice(wanted: LayerSet, on: LayerSet, isNow: boolean): number {
    if ((wanted & on) !== 0) return 0;
    const { entries, parts } = this.#places;
    let least = Number.POSITIVE_INFINITY;
    for (let rest = wanted; rest !== 0; rest &= rest - 1) {
      const layer = 31 - Math.clz32(rest & -rest);
      const from = entries[layer] ?? 0;
      if (from !== 0) least = Math.min(least, isNow && (from & on) === 0 ? 2 : 1);
      const lower = parts[layer] ?? 0;
      if (lower !== 0) least = Math.min(least, lower === ALL ? 1 : countOf(lower & ~on));
    }
    return least;
  }

  /** All layers that may have been turned on for one of these. */
  #gained(wanted: LayerSet, isNow: boolean): LayerSet {
    const { entries, parts } = this.#places;
    let gained = wanted;
    for (let rest = wanted; rest !== 0; rest &= rest - 1) {
      const layer = 31 - Math.clz32(rest & -rest);
      gained |= (parts[layer] ?? 0) | (isNow ? (entries[layer] ?? 0) : 0);
    }
    return gained;
  }

  #edgesAt(node: number): readonly Edge[] {
    const edges = new Map<string, Edge>();
    for (const [sign, hit] of this.#goals.nodes[node]?.hits ?? []) {
      for (const place of this.#places.typing.get(sign >> 8) ?? []) {
        const [own = 0, ...more] = place.act.signs;
        if (!serves(place, own, sign)) continue;
        for (const target of this.#after(place, hit, more)) addEdge(edges, place, own, sign, target);
      }
    }
    return [...edges.values()];
  }

  /** What the further strokes of an action lead to. */
  #after(place: StrokePlace, hit: GoalHit, more: readonly Sign[]): readonly GoalHit[] {
    let hits: readonly GoalHit[] = [hit];
    for (const own of more) {
      hits = hits.flatMap(({ next }) =>
        [...(this.#goals.nodes[next]?.hits ?? [])].flatMap(([sign, further]) =>
          sign >> 8 === own >> 8 && serves(place, own, sign) ? [further] : [],
        ),
      );
    }
    return hits;
  }
}

/** Whether a place's own stroke can become one that is sought. */
function serves({ act }: StrokePlace, own: Sign, sign: Sign): boolean {
  const lifts = act.lifted === true && (own & SHIFTS) === 0;
  return (own & ~sign & 255) === 0 && !(lifts && (sign & SHIFTS) !== 0);
}

function addEdge(
  edges: Map<string, Edge>,
  place: StrokePlace,
  own: Sign,
  sign: Sign,
  { next, needs }: GoalHit,
): void {
  const { live, covered, keys, act } = place;
  const missing = sign & ~own & 255;
  const lifts = act.lifted === true && (own & SHIFTS) === 0;
  const around = (sign & 255) | (lifts ? SHIFTS : 0);
  const underShift = act.lifted === true;
  const name = `${live} ${keys} ${missing} ${around} ${underShift ? 1 : 0} ${next}`;
  const known = edges.get(name);
  if (known === undefined) {
    const set = new Set(needs);
    edges.set(name, { keys, live, covered, missing, around, underShift, next, needs: set, most: NEVER });
    return;
  }
  known.covered &= covered;
  for (const need of needs) known.needs.add(need);
}
