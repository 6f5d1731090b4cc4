import { type Act, type ModifierSet, signUnder } from './act.ts';
import type { FewestPresses } from './fewest-presses.ts';
import { effectOf, Frontier } from './frontier.ts';
import type { Goals } from './goals.ts';
import { Outlook } from './outlook.ts';
import type { LayerSet, Plan } from './plan.ts';
import type { Press } from './press.ts';
import { eachPress } from './presses.ts';
import { restFrom } from './rest.ts';
import { endsAtRest, modifiersOn, REST, rankOf, type State, turnedOn } from './state.ts';
import { afterPress, eachRelease, spent } from './steps-of-state.ts';

/**
 * States looked at for one number of strokes before the search stops. No design of a person has come near it; a need
 * that is not found by then counts as missing.
 */
const MOST_STATES = 20_000;

interface Best {
  readonly end: State;
  readonly rank: number;
}

/** One search over the states, for needs of one number of strokes, each within the presses that `fewest` has been told. */
export class Search {
  readonly #plan: Plan;
  readonly #goals: Goals;
  readonly #frontier = new Frontier();
  readonly #best = new Map<number, Best>();
  readonly #restless = new Set<string>();
  readonly #fewest: FewestPresses;
  readonly #outstanding: Set<number>;
  readonly #outlook: Outlook;

  constructor(plan: Plan, goals: Goals, needs: Set<number>, fewest: FewestPresses) {
    this.#plan = plan;
    this.#goals = goals;
    this.#fewest = fewest;
    this.#outstanding = needs;
    this.#outlook = new Outlook(plan, goals, this.#outstanding);
  }

  /** Per need the cheapest end that was seen: sure to be the cheapest of all where it lies within the need's presses. */
  run(): ReadonlyMap<number, State> {
    this.#frontier.push(REST);
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
      if (this.#isPromising(state)) this.#expand(state);
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
    if (closed) this.#outlook.update(this.#outstanding);
  }

  #isPromising(state: State): boolean {
    if (!this.#outlook.isOpen(state.node) || !this.#outlook.isUseful(null, modifiersOn(state))) return false;
    const layers = turnedOn(state);
    if ((layers & ~this.#outlook.layers(null)) !== 0) return false;
    return state.presses <= this.#fewest.mostAt(state.node, layers, modifiersOn(state));
  }

  #push(state: State): void {
    if (this.#isPromising(state)) this.#frontier.push(state);
  }

  #expand(state: State): void {
    const modifiers = modifiersOn(state);
    const node = outlookAt(state);
    const wants = (act: Act, kept: boolean) => this.#wants(state, modifiers, node, act, kept);
    eachPress(this.#plan, state, wants, (press) => {
      if (press.act.kind === 'type') {
        this.#strokes(state, modifiers, press, press.act);
        return;
      }
      if (!press.kept) this.#bare(state, modifiers, press);
      const next = afterPress(this.#plan, state, press, null);
      if (next !== null && this.#outlook.isUseful(node, modifiersOn(next))) this.#push(next);
    });
    eachRelease(state, (next) => this.#push(next));
  }

  /** Whether a press of this action can come to anything here. */
  #wants(state: State, modifiers: number, node: number | null, act: Act, kept: boolean): boolean {
    if (act.kind === 'type') return !kept && this.#wantsStrokes(state, modifiers, act);
    if (act.kind === 'none') return false;
    if (act.kind === 'modifiers' && !kept) {
      return modifiers === 0 && state.node === 0 && this.#fewest.mayBeBare(state.presses + 1);
    }
    if (act.kind === 'modifiers' || act.kind === 'modifier') {
      if (!this.#outlook.isUseful(node, modifiers | act.set)) return false;
      return this.#isNear(state, turnedOn(state), modifiers | act.set) || this.#mayBeBare(state);
    }
    if ((!kept && act.mode === 'while-held') || ((this.#outlook.layers(node) >>> act.layer) & 1) === 0)
      return false;
    return this.#isNear(state, turnedOn(state) | (1 << act.layer), modifiers);
  }

  /** Whether a need can be had within its limit one press later, when these are on. */
  #isNear(state: State, layers: LayerSet, modifiers: ModifierSet): boolean {
    return state.presses < this.#fewest.mostAt(state.node, layers, modifiers);
  }

  #mayBeBare(state: State): boolean {
    return state.node === 0 && this.#fewest.mayBeBare(state.presses + 1);
  }

  #wantsStrokes(state: State, modifiers: ModifierSet, act: Extract<Act, { kind: 'type' }>): boolean {
    const [first, ...more] = act.signs;
    if (first === undefined) return state.latchedLayers !== 0 && modifiers === 0;
    const hit = this.#goals.nodes[state.node]?.hits.get(signUnder(act, first, modifiers));
    if (hit === undefined) return false;
    if (more.length > 0) return hit.next >= 0;
    const presses = state.presses + 1;
    if (hit.needs.some((need) => this.#mayBeBetter(need, presses))) return true;
    return hit.next >= 0 && presses <= this.#fewest.mostAt(hit.next, turnedOn(state), modifiers);
  }

  /** Whether a way of so many presses to a need would count. */
  #mayBeBetter(need: number, presses: number): boolean {
    if (!this.#outstanding.has(need)) return false;
    const best = this.#best.get(need);
    return best === undefined || presses <= best.end.presses;
  }

  #strokes(state: State, modifiers: number, press: Press, act: Extract<Act, { kind: 'type' }>): void {
    const { signs } = act;
    if (signs.length === 0) {
      // A character that the host cannot type sends nothing, but uses up latched layers.
      const next = afterPress(this.#plan, state, press, state.node);
      if (next !== null) this.#push(next);
      return;
    }
    let node = state.node;
    for (const [at, sign] of signs.entries()) {
      const goal = this.#goals.nodes[node];
      const hit = goal?.hits.get(signUnder(act, sign, modifiers));
      if (hit === undefined) return;
      if (at < signs.length - 1) {
        if (hit.next < 0) return;
        node = hit.next;
        continue;
      }
      if (hit.needs.length > 0) this.#reach(hit.needs, afterPress(this.#plan, state, press, 0));
      if (hit.next >= 0 && !press.kept) {
        const next = afterPress(this.#plan, state, press, hit.next);
        if (next !== null) this.#push(next);
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

/** The node whose outlook counts: what a latch or lock has turned on has to be turned off again, whatever helps further on. */
function outlookAt(state: State): number | null {
  const { latchedLayers, latchedModifiers, lockedLayers, lockedModifiers, held } = state;
  const stays = latchedLayers | latchedModifiers | lockedLayers | lockedModifiers;
  return stays !== 0 || held.some(({ latch }) => latch) ? null : state.node;
}
