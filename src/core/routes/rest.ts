import type { Act } from './act.ts';
import { Frontier } from './frontier.ts';
import type { Plan } from './plan.ts';
import { eachPress } from './presses.ts';
import { endsAtRest, modifiersOn, type State } from './state.ts';
import { afterPress, eachRelease } from './steps-of-state.ts';

/** States looked at before the way to rest is given up. */
const MOST_STATES = 400;

/**
 * The cheapest continuation of a state after which nothing stays on once all keys are let go: locks and unused latches
 * are turned off by presses that send no stroke. Null where there is none.
 */
export function restFrom(plan: Plan, after: State): State | null {
  if (endsAtRest(after)) return after;
  const allowed = modifiersOn(after);
  const frontier = new Frontier();
  frontier.push(after);
  for (let looked = 0; looked < MOST_STATES; looked++) {
    const state = frontier.pop();
    if (state === undefined) return null;
    if (endsAtRest(state)) return state;
    const isBare = modifiersOn(state) === 0;
    const wants = (act: Act, kept: boolean) => {
      // A character that the host cannot type sends nothing, but uses up latched layers.
      if (act.kind === 'type') return !kept && isBare && act.signs.length === 0;
      return act.kind === 'modifier' || (act.kind === 'layer' && (kept || act.mode !== 'while-held'));
    };
    eachPress(plan, state, wants, (press) => {
      const next = afterPress(plan, state, press, press.act.kind === 'type' ? state.node : null);
      if (next !== null && (modifiersOn(next) & ~allowed) === 0) frontier.push(next);
    });
    eachRelease(state, (next) => frontier.push(next));
  }
  return null;
}
