import type { HostLayout } from '../host/host-layout.ts';
import type { Need } from '../keymap/need.ts';
import { type Act, signUnder } from './act.ts';
import { effectOf, Frontier } from './frontier.ts';
import { type Goals, goalsOf, MOST_STROKES } from './goals.ts';
import { meansOf } from './means.ts';
import { Outlook } from './outlook.ts';
import type { Plan } from './plan.ts';
import type { Press } from './press.ts';
import { eachPress } from './presses.ts';
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
  const means = meansOf(plan);
  for (let strokes = 1; strokes <= MOST_STROKES; strokes++) {
    const open = needs.flatMap((_, index) => (found[index] === null ? [index] : []));
    const goals = goalsOf(needs, open, host, strokes, means);
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
  readonly #outlook: Outlook;

  constructor(plan: Plan, goals: Goals) {
    this.#plan = plan;
    this.#goals = goals;
    this.#outstanding = new Set([...goals.setsOf.keys(), ...goals.bare.values()]);
    this.#outlook = new Outlook(plan, goals, this.#outstanding);
  }

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
    return (turnedOn(state) & ~this.#outlook.layers(null)) === 0;
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
      if (next !== null && this.#outlook.isUseful(node, modifiersOn(next))) this.#frontier.push(next);
    });
    eachRelease(state, (next) => this.#frontier.push(next));
  }

  /** Whether a press of this action can come to anything here. */
  #wants(state: State, modifiers: number, node: number | null, act: Act, kept: boolean): boolean {
    if (act.kind === 'type') {
      if (kept) return false;
      if (act.signs.length === 0) return state.latchedLayers !== 0 && modifiers === 0;
      const goal = this.#goals.nodes[state.node];
      return goal?.hits.has(signUnder(act, act.signs[0] ?? 0, modifiers)) ?? false;
    }
    if (act.kind === 'none') return false;
    if (act.kind === 'modifiers' && !kept)
      return this.#goals.bare.size > 0 && modifiers === 0 && state.node === 0;
    if (act.kind === 'modifiers' || act.kind === 'modifier') {
      return this.#outlook.isUseful(node, modifiers | act.set);
    }
    return (kept || act.mode !== 'while-held') && ((this.#outlook.layers(node) >>> act.layer) & 1) === 1;
  }

  #strokes(state: State, modifiers: number, press: Press, act: Extract<Act, { kind: 'type' }>): void {
    const { signs } = act;
    if (signs.length === 0) {
      // A character that the host cannot type sends nothing, but uses up latched layers.
      const next = afterPress(this.#plan, state, press, state.node);
      if (next !== null) this.#frontier.push(next);
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

/** The node whose outlook counts: what a latch or lock has turned on has to be turned off again, whatever helps further on. */
function outlookAt(state: State): number | null {
  const { latchedLayers, latchedModifiers, lockedLayers, lockedModifiers, held } = state;
  const stays = latchedLayers | latchedModifiers | lockedLayers | lockedModifiers;
  return stays !== 0 || held.some(({ latch }) => latch) ? null : state.node;
}
