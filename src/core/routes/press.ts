import type { Side } from '../keymap/types.ts';
import { type Act, SHIFTS } from './act.ts';
import {
  highestOf,
  type LayerSet,
  layersOn,
  type Plan,
  type PlannedBinding,
  type PlannedChord,
  SHORTEST_MS,
} from './plan.ts';
import { modifiersOn, type OpenAsTap, type State, turnedOn } from './state.ts';

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
  /** It is what comes in place of the tap under Shift. */
  readonly shifted: boolean;
  /** The key has been tapped as one of both with `again within`. */
  readonly marksTapped: boolean;
  /** Chords that the kept keys may still grow into. */
  readonly gathering: readonly PlannedChord[];
}

/** Whether an action is worth a press at all, asked before the press is worked out. */
export type Wants = (act: Act, kept: boolean) => boolean;

export type Take = (press: Press) => void;

export const NO_CHORDS: readonly PlannedChord[] = [];

/** A plain press, changed in what is said; one literal, so that all presses have one shape. */
export function pressOf(
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
    shifted: more.shifted ?? false,
    marksTapped: more.marksTapped ?? false,
    gathering: more.gathering ?? NO_CHORDS,
  };
}

/** What every part of the enumeration needs. */
export interface Scope {
  readonly plan: Plan;
  readonly state: State;
  readonly on: LayerSet;
  readonly wants: Wants;
  readonly take: Take;
}

/** What a tap does: under Shift it may be something else (rule A8). */
export function tapUnder(state: State, { tap, shifted }: PlannedBinding): Act | null {
  return shifted !== null && (modifiersOn(state) & SHIFTS) !== 0 ? shifted : tap;
}

/** What must have passed before the next press, given how it settles the open key; null where it cannot settle it so. */
export function settleWait(
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
  // A key that is a tap when it is let go alone is a hold only from the next press on (S14).
  return inside ? { wait: 0, inside } : { wait: open.holdAfterMs, inside: open.tapIfAlone };
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
export function conflictWait(state: State, key: number): number {
  let most = -1;
  for (const chord of state.gathering) {
    if (chord.keys.includes(key)) most = Math.max(most, chord.chord.windowMs);
  }
  return most;
}

/**
 * Whether a press that waits so long can still come within a time: the canonical playing goes a little beyond a wait, and
 * moves on by a step that is a sixteenth of the time at most.
 */
export function isWithin(wait: number, time: number): boolean {
  return wait <= 0 ? time >= SHORTEST_MS : wait + 2 + time / 16 < time;
}

export function canBeKept(act: Act): boolean {
  return (
    act.kind === 'modifiers' || ((act.kind === 'layer' || act.kind === 'modifier') && act.mode !== 'lock')
  );
}

/** The chords with more keys that the kept keys may still become: live where they went down, and quiet enough. */
export function gatheringOf(
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
      mayBeQuiet(state, chord, wait) &&
      keys.every((key) => chord.keys.includes(key)),
  );
}

/** The layer that counts for chords: without what the open key brings, as long as nothing has settled it. */
export function topWhen(plan: Plan, state: State, on: LayerSet, inside: boolean): number {
  return highestOf(inside && state.open !== null ? layersOn(plan, turnedOn(state, false)) : on);
}

export function isLive(chord: PlannedChord, top: number): boolean {
  return ((chord.live >>> top) & 1) === 1;
}

/**
 * Whether it may be quiet enough for a chord after a wait: the canonical playing goes a little beyond what it waits for,
 * and moves on by steps that are a sixteenth of the quiet at most. Taking a chord for live that is not costs only time.
 */
export function mayBeQuiet(state: State, { quietBeforeMs }: PlannedChord, wait: number): boolean {
  return state.presses === 0 || Math.max(wait, state.sinceDownMs) + 2 + quietBeforeMs / 4 >= quietBeforeMs;
}
