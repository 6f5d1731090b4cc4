import type { HostLayout } from '../host/host-layout.ts';
import type { Need } from '../keymap/need.ts';
import { type Act, type ModifierSet, SIGNS, type Sign } from './act.ts';
import { effectOf, Frontier } from './frontier.ts';
import { type Goals, goalsOf, MOST_STROKES } from './goals.ts';
import { canMake } from './means.ts';
import type { LayerSet, Plan } from './plan.ts';
import { eachPress, type Press } from './presses.ts';
import { relevantLayers, type Sought } from './relevant-layers.ts';
import { restFrom } from './rest.ts';
import { endsAtRest, modifiersOn, REST, rankOf, type State, turnedOn } from './state.ts';
import { afterPress, eachRelease, spent } from './steps-of-state.ts';

/** The cheapest way to a need: the state in which it has been typed and only keys are left to be let go. */
export interface Found {
  readonly end: State;
  readonly strokes: number;
}

/**
 * States looked at for one number of strokes before the search stops. No design of a person has come near it; a need
 * that is not found by then counts as missing.
 */
const MOST_STATES = 20_000;

/** Searches the cheapest way to each need, by (strokes, presses, holds, ms), then without a clumsy press, then by what was found first. */
export function searchWays(plan: Plan, host: HostLayout, needs: readonly Need[]): readonly (Found | null)[] {
  const found: (Found | null)[] = needs.map(() => null);
  const makes = canMake(plan);
  for (let strokes = 1; strokes <= MOST_STROKES; strokes++) {
    const open = needs.flatMap((_, index) => (found[index] === null ? [index] : []));
    const goals = goalsOf(needs, open, host, strokes, makes);
    if (goals.setsOf.size === 0 && goals.bare.size === 0) continue;
    const ends = new Search(plan, goals).run();
    for (const [index, end] of ends) found[index] = { end, strokes };
  }
  return found;
}

interface Best {
  readonly end: State;
  readonly rank: number;
}

/** One search over the states, for needs of one number of strokes. */
class Search {
  readonly #plan: Plan;
  readonly #goals: Goals;
  readonly #frontier = new Frontier();
  readonly #best = new Map<number, Best>();
  readonly #restless = new Set<string>();
  readonly #outstanding: Set<number>;
  /** Per modifier set: whether an outstanding need takes it, or more, at some stroke. */
  readonly #useful = new Uint8Array(256);
  /** The layers that can help an outstanding need. */
  #relevant: LayerSet = -1;

  constructor(plan: Plan, goals: Goals) {
    this.#plan = plan;
    this.#goals = goals;
    this.#outstanding = new Set([...goals.setsOf.keys(), ...goals.bare.values()]);
  }

  run(): ReadonlyMap<number, State> {
    this.#frontier.push(REST);
    this.#markUseful();
    let bucket = -1;
    for (let looked = 0; looked < MOST_STATES; looked++) {
      const state = this.#frontier.pop();
      if (state === undefined) break;
      const now = state.presses * 1000 + state.holds;
      if (now !== bucket) {
        bucket = now;
        this.#close(state);
        if (this.#outstanding.size === 0) break;
      }
      if (this.#useful[modifiersOn(state)] !== 1 || (turnedOn(state) & ~this.#relevant) !== 0) continue;
      this.#expand(state);
    }
    return new Map([...this.#best].map(([need, best]) => [need, best.end]));
  }

  /** Needs for which nothing cheaper can come any more: every further state costs one press more at least. */
  #close(state: State): void {
    const least = rankOf({ presses: state.presses + 1, holds: state.holds, waitMs: 0 });
    let closed = false;
    for (const need of this.#outstanding) {
      const best = this.#best.get(need);
      if (best !== undefined && best.rank < least) closed = this.#outstanding.delete(need) || closed;
    }
    if (closed) this.#markUseful();
  }

  #markUseful(): void {
    this.#useful.fill(0);
    this.#useful[0] = 1;
    const sets = new Set<number>();
    for (const need of this.#outstanding) for (const set of this.#goals.setsOf.get(need) ?? []) sets.add(set);
    // A modifier by itself may be a latch or lock that is turned on and off again.
    for (const [set, need] of this.#goals.bare) if (this.#outstanding.has(need)) sets.add(set);
    for (const set of sets) {
      for (let part = set; part > 0; part = (part - 1) & set) this.#useful[part] = 1;
    }
    this.#relevant = relevantLayers(this.#plan, this.#sought(sets));
  }

  #sought(sets: Iterable<ModifierSet>): Sought {
    const codes = new Uint8Array(SIGNS >> 8);
    for (const need of this.#outstanding)
      for (const code of this.#goals.codesOf.get(need) ?? []) codes[code] = 1;
    let modifiers: ModifierSet = 0;
    for (const set of sets) modifiers |= set;
    return { codes, modifiers };
  }

  #expand(state: State): void {
    const modifiers = modifiersOn(state);
    const wants = (act: Act, kept: boolean) => this.#wants(state, modifiers, act, kept);
    eachPress(this.#plan, state, wants, (press) => {
      if (press.act.kind === 'type') {
        this.#strokes(state, modifiers, press, press.act.signs);
        return;
      }
      if (!press.kept) this.#bare(state, modifiers, press);
      const next = afterPress(this.#plan, state, press, null);
      if (next !== null && this.#useful[modifiersOn(next)] === 1) this.#frontier.push(next);
    });
    eachRelease(state, (next) => this.#frontier.push(next));
  }

  /** Whether a press of this action can come to anything here. */
  #wants(state: State, modifiers: number, act: Act, kept: boolean): boolean {
    if (act.kind === 'type') {
      if (kept) return false;
      if (act.signs.length === 0) return state.latchedLayers !== 0 && modifiers === 0;
      const goal = this.#goals.nodes[state.node];
      return (goal?.at[(act.signs[0] ?? 0) | modifiers] ?? -1) >= 0;
    }
    if (act.kind === 'none') return false;
    if (act.kind === 'modifiers' && !kept)
      return this.#goals.bare.size > 0 && modifiers === 0 && state.node === 0;
    if (act.kind === 'modifiers' || act.kind === 'modifier') return this.#useful[modifiers | act.set] === 1;
    return (kept || act.mode !== 'while-held') && ((this.#relevant >>> act.layer) & 1) === 1;
  }

  #strokes(state: State, modifiers: number, press: Press, signs: readonly Sign[]): void {
    if (signs.length === 0) {
      // A character that the host cannot type sends nothing, but uses up latched layers.
      const next = afterPress(this.#plan, state, press, state.node);
      if (next !== null) this.#frontier.push(next);
      return;
    }
    let node = state.node;
    for (const [at, sign] of signs.entries()) {
      const goal = this.#goals.nodes[node];
      const hit = goal?.hits[goal.at[sign | modifiers] ?? -1];
      if (hit === undefined) return;
      if (at < signs.length - 1) {
        if (hit.next < 0) return;
        node = hit.next;
        continue;
      }
      if (hit.needs.length > 0) this.#reach(hit.needs, afterPress(this.#plan, state, press, 0));
      if (hit.next >= 0 && !press.kept) {
        const next = afterPress(this.#plan, state, press, hit.next);
        if (next !== null) this.#frontier.push(next);
      }
    }
  }

  /** A modifier by itself: tapped, held past its time, or latched or locked and taken off again. */
  #bare(state: State, modifiers: number, press: Press): void {
    if (this.#goals.bare.size === 0 || state.node !== 0) return;
    const { act } = press;
    if (act.kind === 'modifiers' && act.bare !== null && modifiers === 0) {
      const need = this.#goals.bare.get(act.set);
      if (need !== undefined) this.#reach([need], spent(this.#plan, state, press));
    }
    if (act.kind === 'modifier' && modifiers === act.set && state.fresh === act.set) {
      const need = this.#goals.bare.get(act.set);
      const on = act.mode === 'lock' ? state.lockedModifiers : state.latchedModifiers;
      if (need === undefined || on !== act.set) return;
      const end = spent(this.#plan, state, press);
      const off = act.mode === 'lock' ? { lockedModifiers: 0 } : { latchedModifiers: 0 };
      this.#reach([need], { ...end, ...off, fresh: 0 });
    }
  }

  /** The way to rest; that there is none is remembered, since a lock that nobody can leave is met again and again. */
  #rest(after: State): State | null {
    if (endsAtRest(after)) return after;
    const key = `${effectOf(after)} ${after.held.map((held) => held.keys.join('+')).join(',')}`;
    if (this.#restless.has(key)) return null;
    const end = restFrom(this.#plan, after);
    if (end === null) this.#restless.add(key);
    return end;
  }

  #reach(needs: readonly number[], after: State | null): void {
    if (after === null) return;
    const rank = rankOf(after);
    const better = needs.filter((need) => {
      if (!this.#outstanding.has(need)) return false;
      const best = this.#best.get(need);
      return (
        best === undefined || rank < best.rank || (rank === best.rank && best.end.clumsy && !after.clumsy)
      );
    });
    if (better.length === 0) return;
    const end = this.#rest(after);
    if (end === null) return;
    const whole = rankOf(end);
    for (const need of better) {
      const best = this.#best.get(need);
      if (
        best === undefined ||
        whole < best.rank ||
        (whole === best.rank && best.end.clumsy && !end.clumsy)
      ) {
        this.#best.set(need, { end, rank: whole });
      }
    }
  }
}
