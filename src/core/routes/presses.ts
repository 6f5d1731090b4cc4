import type { Act } from './act.ts';
import { chordPresses } from './chord-presses.ts';
import { layersOn, type Plan, type PlannedBinding, viewOf } from './plan.ts';
import {
  canBeKept,
  conflictWait,
  gatheringOf,
  isWithin,
  pressOf,
  type Scope,
  settleWait,
  type Take,
  tapUnder,
  type Wants,
} from './press.ts';
import { isDown, type State, turnedOn } from './state.ts';

/** Hands every press of a key or chord that is wanted in a state to `take`: keys in the board's order, then chords in the document's. */
export function eachPress(plan: Plan, state: State, wants: Wants, take: Take): void {
  const on = layersOn(plan, turnedOn(state));
  const view = viewOf(plan, on);
  for (let key = 0; key < view.length; key++) {
    const binding = view[key];
    if (binding === null || binding === undefined || isDown(state, key)) continue;
    keyPresses({ plan, state, on, wants, take }, key, binding);
  }
  if (plan.chords.length > 0 && state.openAsTap === null) chordPresses({ plan, state, on, wants, take });
}

function keyPresses(scope: Scope, key: number, binding: PlannedBinding): void {
  const { hold, both } = binding;
  const { plan, state, wants, take } = scope;
  const tap = tapUnder(state, binding);
  const shifted = tap !== binding.tap;
  const act = tap ?? hold;
  if (act === null) return;
  const marksTapped = both && plan.remembers[key] === true;
  const teaches = marksTapped && act.kind === 'layer' && act.mode === 'while-held';
  if (wants(act, false) || teaches) {
    const settled = settleWait(plan, state, key, true);
    if (settled !== null) {
      const before = Math.max(settled.wait, conflictWait(state, key));
      take(pressOf([key], tap === null ? 'hold' : 'tap', act, false, before, { marksTapped, shifted }));
    }
  }
  if (!both) {
    if (canBeKept(act) && wants(act, true)) keep(scope, key, binding, act);
    return;
  }
  if (hold !== null) holds(scope, key, binding, hold);
  if (tap !== null && canBeKept(tap) && wants(tap, true)) keptTaps(scope, key, binding, tap);
}

/** A key with one action only that stays down. */
function keep({ plan, state, on, take }: Scope, key: number, binding: PlannedBinding, act: Act): void {
  const settled = settleWait(plan, state, key, false);
  if (settled === null) return;
  const before = Math.max(settled.wait, conflictWait(state, key));
  const gathering = gatheringOf(plan, state, on, settled.inside, [key], before);
  take(pressOf([key], binding.tap === null ? 'hold' : 'tap', act, true, before, { gathering }));
}

/** A hold/tap key as a hold: kept for what comes next, or held until it is one and let go. */
function holds(
  { plan, state, on, wants, take }: Scope,
  key: number,
  binding: PlannedBinding,
  act: Act,
): void {
  const keeps = canBeKept(act) && wants(act, true);
  const taps = wants(act, false);
  if (!keeps && !taps) return;
  const settled = settleWait(plan, state, key, false);
  if (settled === null) return;
  const quiet = state.presses > 0 ? binding.quietBeforeMs : 0;
  const afterRelease = state.tapped.includes(key) ? binding.againWithinMs : 0;
  const before = Math.max(settled.wait, conflictWait(state, key), afterRelease);
  const waited = Math.max(before, quiet);
  if (state.openAsTap !== null && !isWithin(waited, state.open?.holdAfterMs ?? 0)) return;
  if (keeps) {
    const gathering = gatheringOf(plan, state, on, settled.inside, [key], waited);
    take(
      pressOf([key], 'hold', act, true, before, {
        quiet,
        afterRelease,
        settles: 'by-next',
        open: binding,
        gathering,
      }),
    );
  }
  if (!taps || binding.tapIfAlone) return;
  const { holdAfterMs } = binding;
  take(pressOf([key], 'hold', act, false, before, { quiet, afterRelease, settles: 'by-time', holdAfterMs }));
}

/** A hold/tap key that stays down as a tap: by quiet before, by again within, or by the next press of the same hand. */
function keptTaps({ plan, state, on, take }: Scope, key: number, binding: PlannedBinding, act: Act): void {
  const settled = settleWait(plan, state, key, false);
  if (settled === null) return;
  const before = Math.max(settled.wait, conflictWait(state, key));
  const byQuiet =
    latestIsClose(state) && isWithin(Math.max(before, state.sinceDownMs), binding.quietBeforeMs);
  const byAgain = wasJustTapped(state, key) && isWithin(before, binding.againWithinMs);
  const marksTapped = plan.remembers[key] === true;
  const gathering = gatheringOf(plan, state, on, settled.inside, [key], before);
  const atOnce = { keptTap: true, marksTapped, gathering };
  if (byQuiet || byAgain) {
    take(pressOf([key], 'tap', act, true, before, atOnce));
    return;
  }
  const open = { ...atOnce, settles: 'by-next', open: binding } as const;
  if (binding.sameHandTaps) take(pressOf([key], 'tap', act, true, before, { ...open, openAsTap: 'by-next' }));
  if (act.kind === 'modifiers' || (act.kind === 'layer' && act.mode === 'while-held')) {
    take(pressOf([key], 'tap', act, true, before, { ...open, openAsTap: 'by-release' }));
  }
}

/** Whether the latest press was just now: a chord counts from its first key, which a spread leaves far behind. */
function latestIsClose(state: State): boolean {
  for (let at: State | null = state; at !== null; at = at.from) {
    if (at.move?.kind === 'press') return at.move.spread === null;
  }
  return false;
}

/** Whether the latest move was a tap of this key: what comes next comes soon enough after it. */
function wasJustTapped({ move, tapped }: State, key: number): boolean {
  if (move?.kind !== 'press' || move.kept || move.chord !== null || move.settles !== 'at-once') return false;
  return move.keys[0] === key && tapped.includes(key);
}
