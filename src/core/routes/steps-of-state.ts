import type { Plan } from './plan.ts';
import type { Press } from './press.ts';
import { afterAct, afterStrokes, type Move, modifiersOn, type State } from './state.ts';

/** The state after a press whose strokes, if it has any, lead to a node of the goals; null where it would be of no use. */
export function afterPress(plan: Plan, state: State, press: Press, node: number | null): State | null {
  const settled = spent(plan, state, press);
  const next =
    node === null ? afterAct(settled, press.act, press.keys, press.kept) : afterStrokes(settled, node);
  // A modifier let go before a stroke would be a bare tap.
  if (next !== null) return (next.fresh & ~modifiersOn(next)) === 0 ? next : null;
  // A tap that does nothing can still make the next press of its key a tap that stays down.
  const teaches =
    !press.kept &&
    press.marksTapped &&
    press.act.kind === 'layer' &&
    !state.tapped.includes(press.keys[0] ?? -1);
  return teaches && press.act.kind === 'layer' && press.act.mode === 'while-held' ? settled : null;
}

/** The state with the cost of a press and what it settles, but without what its action does. */
export function spent(plan: Plan, state: State, press: Press): State {
  const isHeld = press.kept || press.settles === 'by-time';
  const waited =
    Math.max(0, Math.max(press.before, press.quiet) - state.sinceDownMs) +
    (press.spread ?? 0) +
    press.holdAfterMs;
  const key = press.keys[0] ?? -1;
  const {
    keys,
    chord,
    side,
    kept,
    before,
    quiet,
    afterRelease,
    settles,
    holdAfterMs,
    spread,
    keptTap,
    shifted,
  } = press;
  const openMs = press.open?.holdAfterMs ?? 0;
  const lets = state.openAsTap === 'by-release' ? (state.held.at(-1)?.keys ?? []) : [];
  const timing = { before, quiet, afterRelease, settles, holdAfterMs, openMs, spread, lets };
  const move: Move = { kind: 'press', keys, chord, side, kept, keptTap, shifted, ...timing };
  return {
    held: lets.length === 0 ? state.held : state.held.slice(0, -1),
    latchedLayers: state.latchedLayers,
    latchedModifiers: state.latchedModifiers,
    lockedLayers: state.lockedLayers,
    lockedModifiers: state.lockedModifiers,
    fresh: state.fresh,
    node: state.node,
    presses: state.presses + press.keys.length,
    holds: state.holds + (isHeld ? 1 : 0),
    waitMs: state.waitMs + waited,
    open: press.open,
    openAsTap: press.openAsTap,
    releasedSinceOpen: false,
    gathering: press.gathering,
    tapped: press.marksTapped && !state.tapped.includes(key) ? [...state.tapped, key] : state.tapped,
    sinceDownMs: press.holdAfterMs,
    clumsy: state.clumsy || isClumsy(plan, state, press.keys),
    from: state,
    move,
  };
}

/** Whether a finger that holds a key has to press one of these as well. */
function isClumsy(plan: Plan, state: State, keys: readonly number[]): boolean {
  if (state.held.length === 0) return false;
  return keys.some((key) => {
    const pressed = plan.keys[key];
    return state.held.some((held) =>
      held.keys.some((down) => {
        const other = plan.keys[down];
        return other?.hand === pressed?.hand && other?.finger === pressed?.finger;
      }),
    );
  });
}

/** Whether modifiers have been on through a stroke of a sequence that goes on: the next stroke may have to do without. */
function hasServed(state: State, modifiers: number): boolean {
  return state.node !== 0 && (state.fresh & modifiers) === 0;
}

/**
 * The states that letting go of a held layer leads to. It is worth it only where something else stays on or the sequence of
 * strokes goes on; a modifier let go before a stroke would be a bare tap, and the open key would become a tap.
 */
export function eachRelease(state: State, take: (state: State) => void): void {
  if (state.openAsTap !== null) return;
  const stays = state.latchedLayers | state.lockedLayers | modifiersOn(state);
  if (state.held.length < 2 && stays === 0 && state.node === 0) return;
  state.held.forEach((held, at) => {
    if (held.latch || (held.modifiers !== 0 && !hasServed(state, held.modifiers))) return;
    if (state.open !== null && at === state.held.length - 1) return;
    take({
      ...state,
      held: state.held.filter((other) => other !== held),
      releasedSinceOpen: state.open !== null,
      gathering: at === state.held.length - 1 ? [] : state.gathering,
      from: state,
      move: { kind: 'release', keys: held.keys },
    });
  });
}
