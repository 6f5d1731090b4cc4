import { type ModifierSet, SHIFTS, SIGNS } from './act.ts';
import type { Goals } from './goals.ts';
import type { LayerSet, Plan } from './plan.ts';
import { relevantLayers } from './relevant-layers.ts';

/** What can still help at a node: some modifiers, some layers. */
interface Help {
  /** Per modifier set: whether a stroke that is sought takes it, or more. */
  readonly useful: Uint8Array;
  readonly layers: LayerSet;
}

/** What is worth doing at each node of the goals, for the needs that are still to be found. */
export class Outlook {
  readonly #plan: Plan;
  readonly #goals: Goals;
  /** Per node: whether a need that is still to be found ends there or further on. */
  readonly #open: Uint8Array;
  /** Help further on, worked out when first asked for: what has been found since only makes it more than is needed. */
  readonly #further: (Help | undefined)[];
  #anywhere: Help;

  constructor(plan: Plan, goals: Goals, outstanding: ReadonlySet<number>) {
    this.#plan = plan;
    this.#goals = goals;
    this.#open = new Uint8Array(goals.nodes.length);
    this.#further = goals.nodes.map(() => undefined);
    this.#anywhere = this.#helpAnywhere(outstanding);
    this.#markOpen(outstanding);
  }

  /** Some needs have been found. */
  update(outstanding: ReadonlySet<number>): void {
    this.#anywhere = this.#helpAnywhere(outstanding);
    this.#markOpen(outstanding);
  }

  isOpen(node: number): boolean {
    return this.#open[node] === 1;
  }

  /** Whether modifiers can help from a node on; of `null`, anywhere. */
  isUseful(node: number | null, set: ModifierSet): boolean {
    return this.#helpAt(node).useful[set] === 1;
  }

  /** The layers that can help from a node on; of `null`, anywhere. */
  layers(node: number | null): LayerSet {
    return this.#helpAt(node).layers;
  }

  #helpAt(node: number | null): Help {
    if (node === null || node === 0) return this.#anywhere;
    const known = this.#further[node];
    if (known !== undefined) return known;
    const help = this.#helpFurther(node);
    this.#further[node] = help;
    return help;
  }

  #markOpen(outstanding: ReadonlySet<number>): void {
    this.#open[0] = 1;
    // A node comes after the one that leads to it.
    for (let node = this.#goals.nodes.length - 1; node > 0; node--) {
      const hits = this.#goals.nodes[node]?.hits.values() ?? [];
      const isOpen = [...hits].some(
        ({ needs, next }) =>
          (next > 0 && this.#open[next] === 1) || needs.some((need) => outstanding.has(need)),
      );
      this.#open[node] = isOpen ? 1 : 0;
    }
  }

  #helpAnywhere(outstanding: ReadonlySet<number>): Help {
    const sets = new Set<ModifierSet>();
    const codes = new Uint8Array(SIGNS >> 8);
    for (const need of outstanding) {
      for (const set of this.#goals.setsOf.get(need) ?? []) sets.add(set);
      for (const code of this.#goals.codesOf.get(need) ?? []) codes[code] = 1;
    }
    // A modifier by itself may be a latch or lock that is turned on and off again.
    for (const [set, need] of this.#goals.bare) if (outstanding.has(need)) sets.add(set);
    return this.#helpWith(codes, sets);
  }

  #helpFurther(from: number): Help {
    const sets = new Set<ModifierSet>();
    const codes = new Uint8Array(SIGNS >> 8);
    const nodes = [from];
    for (let node = nodes.pop(); node !== undefined; node = nodes.pop()) {
      for (const [sign, { next }] of this.#goals.nodes[node]?.hits ?? []) {
        sets.add(sign & 255);
        codes[sign >> 8] = 1;
        if (next > 0) nodes.push(next);
      }
    }
    return this.#helpWith(codes, sets);
  }

  #mayWantShift(codes: Uint8Array): boolean {
    for (const code of this.#plan.shifted) if (codes[code] === 1) return true;
    return false;
  }

  #helpWith(codes: Uint8Array, sets: ReadonlySet<ModifierSet>): Help {
    const useful = new Uint8Array(256);
    useful[0] = 1;
    let modifiers: ModifierSet = 0;
    // What comes under Shift only, without it, wants Shift around what is sought (rule A8).
    const around = this.#mayWantShift(codes) ? SHIFTS : 0;
    for (const sought of sets) {
      const set = sought | around;
      modifiers |= set;
      for (let part = set; part > 0; part = (part - 1) & set) useful[part] = 1;
    }
    return { useful, layers: relevantLayers(this.#plan, { codes, modifiers }) };
  }
}
