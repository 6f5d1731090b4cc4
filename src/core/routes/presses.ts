import type { Side } from '../keymap/types.ts';
import type { Act } from './act.ts';
import {
  highestOf,
  type LayerSet,
  layersOn,
  type Plan,
  type PlannedBinding,
  type PlannedChord,
  SHORTEST_MS,
  viewOf,
} from './plan.ts';
import { isDown, type OpenAsTap, type State, turnedOn } from './state.ts';

/** A press that can be made in a state, and what it does. */
export interface Press {
  readonly keys: readonly number[];
  readonly chord: PlannedChord | null;
  readonly side: Side;
  readonly act: Act;
  readonly kept: boolean;
  /** See `Move`. */
  readonly before: number;
  readonly quiet: number;
  readonly afterRelease: number;
  readonly settles: 'at-once' | 'by-time' | 'by-next';
  readonly holdAfterMs: number;
  readonly spread: number | null;
  readonly keptTap: boolean;
  /** The binding that the next press settles; null where this one is settled by itself. */
  readonly open: PlannedBinding | null;
  readonly openAsTap: OpenAsTap;
  /** The key has been tapped as one of both with `again within`. */
  readonly marksTapped: boolean;
  /** Chords that the kept keys may still grow into. */
  readonly gathering: readonly PlannedChord[];
}

/** Whether an action is worth a press at all, asked before the press is worked out. */
export type Wants = (act: Act, kept: boolean) => boolean;

type Take = (press: Press) => void;

const NO_CHORDS: readonly PlannedChord[] = [];

/** A plain press, changed in what is said; one literal, so that all presses have one shape. */
function pressOf(
  keys: readonly number[],
  side: Side,
  act: Act,
  kept: boolean,
  before: number,
  more: Partial<Omit<Press, 'keys' | 'side' | 'act' | 'kept' | 'before'>>,
): Press {
  return {
    keys,
    chord: more.chord ?? null,
    side,
    act,
    kept,
    before,
    quiet: more.quiet ?? 0,
    afterRelease: more.afterRelease ?? 0,
    settles: more.settles ?? 'at-once',
    holdAfterMs: more.holdAfterMs ?? 0,
    spread: more.spread ?? null,
    keptTap: more.keptTap ?? false,
    open: more.open ?? null,
    openAsTap: more.openAsTap ?? null,
    marksTapped: more.marksTapped ?? false,
    gathering: more.gathering ?? NO_CHORDS,
  };
}

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

/** What every part of the enumeration needs. */
interface Scope {
  readonly plan: Plan;
  readonly state: State;
  readonly on: LayerSet;
  readonly wants: Wants;
  readonly take: Take;
}

/** What must have passed before the next press, given how it settles the open key; null where it cannot settle it so. */
function settleWait(
  plan: Plan,
  state: State,
  key: number | null,
  byRelease: boolean,
): { wait: number; inside: boolean } | null {
  const { open } = state;
  if (open === null) return { wait: 0, inside: false };
  const same = key !== null && open.sameHandTaps && sameHandNoThumb(plan, state, key);
  // Past the window of a chord that the two could become, the open key must not be past its time.
  if (state.openAsTap !== null) {
    const settles = state.openAsTap === 'by-next' ? same : same || open.holdBy !== 'press-inside';
    const inTime = key !== null && conflictWait(state, key) < open.holdAfterMs;
    return settles && inTime ? { wait: 0, inside: true } : null;
  }
  const inside = !same && (open.holdBy === 'press-inside' || (open.holdBy === 'tap-inside' && byRelease));
  return inside ? { wait: 0, inside } : { wait: open.holdAfterMs, inside };
}

function sameHandNoThumb(plan: Plan, state: State, key: number): boolean {
  const one = plan.keys[state.held.at(-1)?.keys[0] ?? -1];
  const other = plan.keys[key];
  return (
    one !== undefined &&
    other !== undefined &&
    one.hand === other.hand &&
    one.finger !== 'thumb' &&
    other.finger !== 'thumb'
  );
}

/** The longest window of the chords that the waiting keys and this one are both part of; -1 where there are none. */
function conflictWait(state: State, key: number): number {
  let most = -1;
  for (const chord of state.gathering) {
    if (chord.keys.includes(key)) most = Math.max(most, chord.chord.windowMs);
  }
  return most;
}

function keyPresses(scope: Scope, key: number, binding: PlannedBinding): void {
  const { tap, hold, both } = binding;
  const act = tap ?? hold;
  if (act === null) return;
  const { plan, state, wants, take } = scope;
  const marksTapped = both && plan.remembers[key] === true;
  const teaches = marksTapped && act.kind === 'layer' && act.mode === 'while-held';
  if (wants(act, false) || teaches) {
    const settled = settleWait(plan, state, key, true);
    if (settled !== null) {
      const before = Math.max(settled.wait, conflictWait(state, key));
      take(pressOf([key], tap === null ? 'hold' : 'tap', act, false, before, { marksTapped }));
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
  if (!taps) return;
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

/**
 * Whether a press that waits so long can still come within a time: the canonical playing goes a little beyond a wait, and
 * moves on by a step that is a sixteenth of the time at most.
 */
function isWithin(wait: number, time: number): boolean {
  return wait <= 0 ? time >= SHORTEST_MS : wait + 2 + time / 16 < time;
}

function canBeKept(act: Act): boolean {
  return (
    act.kind === 'modifiers' || ((act.kind === 'layer' || act.kind === 'modifier') && act.mode !== 'lock')
  );
}

/** The chords with more keys that the kept keys may still become: live where they went down, and quiet enough. */
function gatheringOf(
  plan: Plan,
  state: State,
  on: LayerSet,
  inside: boolean,
  keys: readonly number[],
  wait: number,
): readonly PlannedChord[] {
  const chords = plan.chordsOfKey[keys[0] ?? -1] ?? NO_CHORDS;
  if (chords.length === 0) return NO_CHORDS;
  const top = topWhen(plan, state, on, inside);
  return chords.filter(
    (chord) =>
      chord.keys.length > keys.length &&
      isLive(chord, top) &&
      isQuiet(state, chord, wait) &&
      keys.every((key) => chord.keys.includes(key)),
  );
}

/** The layer that counts for chords: without what the open key brings, as long as nothing has settled it. */
function topWhen(plan: Plan, state: State, on: LayerSet, inside: boolean): number {
  return highestOf(inside && state.open !== null ? layersOn(plan, turnedOn(state, false)) : on);
}

function isLive(chord: PlannedChord, top: number): boolean {
  return ((chord.live >>> top) & 1) === 1;
}

function isQuiet(state: State, chord: PlannedChord, wait: number): boolean {
  return state.presses === 0 || Math.max(wait, state.sinceDownMs) >= chord.quietBeforeMs;
}

function chordPresses(scope: Scope): void {
  const { plan, state, on, wants } = scope;
  const top = topWhen(plan, state, on, false);
  const inside = state.open !== null && !state.releasedSinceOpen ? settleWait(plan, state, null, true) : null;
  const keptInside = inside === null ? null : settleWait(plan, state, null, false);
  const topInside = inside === null ? top : topWhen(plan, state, on, true);
  for (const chord of plan.chords) {
    const taps = wants(chord.act, false);
    const keeps = canBeKept(chord.act) && wants(chord.act, true);
    if (!taps && !keeps) continue;
    if (chord.keys.some((key) => isDown(state, key))) continue;
    if (inside?.inside === true && isLive(chord, topInside)) {
      chordPress(scope, chord, true, 0, taps, keeps && keptInside?.inside === true);
    }
    if (isLive(chord, top)) chordPress(scope, chord, false, state.open?.holdAfterMs ?? 0, taps, keeps);
  }
}

function chordPress(
  { plan, state, on, take }: Scope,
  chord: PlannedChord,
  inside: boolean,
  settle: number,
  taps: boolean,
  keeps: boolean,
): void {
  const free = chord.keys.find((key) => conflictWait(state, key) < 0);
  const keys = free === undefined ? chord.keys : [free, ...chord.keys.filter((key) => key !== free)];
  const conflict = free === undefined ? conflictWait(state, keys[0] ?? -1) : 0;
  const quiet = state.presses > 0 ? chord.quietBeforeMs : 0;
  const before = Math.max(settle, conflict);
  const waited = Math.max(before, quiet);
  const spread = spreadPast(plan, state, chord, topWhen(plan, state, on, inside), waited);
  if (spread === 'never') return;
  if (taps) take(pressOf(keys, 'tap', chord.act, false, before, { quiet, chord, spread }));
  if (!keeps) return;
  const gathering = gatheringOf(plan, state, on, inside, keys, waited);
  take(pressOf(keys, 'tap', chord.act, true, before, { quiet, chord, spread, gathering }));
}

/**
 * How far apart a chord's keys must be pressed so that no earlier chord of the same keys takes them: null where
 * together will do, `never` where one takes them always.
 */
function spreadPast(
  plan: Plan,
  state: State,
  chord: PlannedChord,
  top: number,
  wait: number,
): number | null | 'never' {
  let spread: number | null = null;
  for (const other of plan.chordsOfKey[chord.keys[0] ?? -1] ?? NO_CHORDS) {
    if (other === chord) return spread;
    const isSame =
      other.keys.length === chord.keys.length && other.keys.every((key) => chord.keys.includes(key));
    if (!isSame || !isLive(other, top) || !isQuiet(state, other, wait)) continue;
    if (other.chord.windowMs + SHORTEST_MS > chord.chord.windowMs) return 'never';
    spread = Math.max(spread ?? 0, other.chord.windowMs);
  }
  return spread;
}
