import type { Side } from '../keymap/types.ts';
import type { Act, ModifierSet } from './act.ts';
import type { LayerSet, PlannedBinding, PlannedChord } from './plan.ts';

/**
 * How a route is made, move by move. What counts as waiting is measured on this canonical playing: every press is
 * settled before the next move comes, but for a hold/tap key that the next press itself settles as a hold (S5, S6) or
 * as a tap that stays down (S4). The waits are then
 * - `hold after`, where a key becomes a hold by time;
 * - the window, where a key that may yet become a chord is held and the next key could complete one with it;
 * - the quiet before a chord or a hold, and `again within` before a hold, where another press has come before;
 * - the spread with which a chord is pressed that another one of the same keys and a shorter window would take.
 */
export type Move =
  | {
      readonly kind: 'press';
      readonly keys: readonly number[];
      readonly chord: PlannedChord | null;
      readonly side: Side;
      /** The keys stay down after it. */
      readonly kept: boolean;
      /** ms that must have passed since the latest down before this one. */
      readonly before: number;
      /** ms since the latest down that are enough to the ms, where `before` must be exceeded. */
      readonly quiet: number;
      /** ms that must have passed since the latest release. */
      readonly afterRelease: number;
      /** `by-time`: it stays down until it is a hold; `by-next`: the next press settles it, or waits until time has. */
      readonly settles: 'at-once' | 'by-time' | 'by-next';
      readonly holdAfterMs: number;
      /** Keys that are let go right after the press: it is their release that settles them as taps (S3). */
      readonly lets: readonly number[];
      /** ms for which the key can stay open. */
      readonly openMs: number;
      /** ms that the last key of a chord must come after the first by more than; null where together will do. */
      readonly spread: number | null;
      /** The key settles as a tap though it stays down. */
      readonly keptTap: boolean;
      /** It is what comes in place of the tap under Shift (rule A8). */
      readonly shifted: boolean;
    }
  | { readonly kind: 'release'; readonly keys: readonly number[] };

/** How an open key is to become a tap that has its effect on the next press: by that press (S4), or by its own release after it (S3). */
export type OpenAsTap = 'by-next' | 'by-release' | null;

/** A key or chord that is down and does something as long as it is. */
export interface Held {
  readonly keys: readonly number[];
  readonly layers: LayerSet;
  readonly modifiers: ModifierSet;
  /** A latch whose key is still down: it cannot be let go before it was used. */
  readonly latch: boolean;
}

/** A moment between two moves. */
export interface State {
  readonly presses: number;
  readonly holds: number;
  readonly waitMs: number;
  /** In the order of going down. */
  readonly held: readonly Held[];
  /** Latches that are on, unused, their keys up. */
  readonly latchedLayers: LayerSet;
  readonly latchedModifiers: ModifierSet;
  readonly lockedLayers: LayerSet;
  readonly lockedModifiers: ModifierSet;
  /** Modifiers that have been on through no stroke yet: going off now they would be a bare tap. */
  readonly fresh: ModifierSet;
  /** The node of the goals that the strokes so far have led to. */
  readonly node: number;
  /** The binding of the last held key while nothing has settled it; what it becomes stands in `held` already. */
  readonly open: PlannedBinding | null;
  /** The open key is to become a tap that stays down: the next press must be one that settles it so. */
  readonly openAsTap: OpenAsTap;
  /** Something was released since the open key went down. */
  readonly releasedSinceOpen: boolean;
  /** Chords that the last held keys may still grow into. */
  readonly gathering: readonly PlannedChord[];
  /** Hold/tap keys with `again within` that have been tapped. */
  readonly tapped: readonly number[];
  /** ms for which the latest key has been down, where it was held until it was a hold. */
  readonly sinceDownMs: number;
  /** A finger has had to hold one key and press another. */
  readonly clumsy: boolean;
  readonly from: State | null;
  readonly move: Move | null;
}

/** The board at rest. */
export const REST: State = {
  presses: 0,
  holds: 0,
  waitMs: 0,
  held: [],
  latchedLayers: 0,
  latchedModifiers: 0,
  lockedLayers: 0,
  lockedModifiers: 0,
  fresh: 0,
  node: 0,
  open: null,
  openAsTap: null,
  releasedSinceOpen: false,
  gathering: [],
  tapped: [],
  sinceDownMs: 0,
  clumsy: false,
  from: null,
  move: null,
};

/** Costs as one number that orders like (presses, holds, ms): holds below 1000, ms below ten million. */
export function rankOf(state: Pick<State, 'presses' | 'holds' | 'waitMs'>): number {
  return state.presses * 1e10 + state.holds * 1e7 + state.waitMs;
}

/** The layers that something turns on, conditions left aside. */
export function turnedOn(state: State, withOpen = true): LayerSet {
  let layers = state.latchedLayers | state.lockedLayers;
  const count = withOpen || state.open === null ? state.held.length : state.held.length - 1;
  for (let at = 0; at < count; at++) layers |= state.held[at]?.layers ?? 0;
  return layers;
}

/** The modifiers that are down. */
export function modifiersOn(state: State): ModifierSet {
  let set = state.latchedModifiers | state.lockedModifiers;
  for (const held of state.held) set |= held.modifiers;
  return set;
}

/** Whether a key is down. */
export function isDown(state: State, key: number): boolean {
  return state.held.some((held) => held.keys.includes(key));
}

/** Whether nothing stays on when all keys are let go. */
export function endsAtRest(state: State): boolean {
  return (
    state.latchedLayers === 0 &&
    state.latchedModifiers === 0 &&
    state.lockedLayers === 0 &&
    state.lockedModifiers === 0 &&
    state.fresh === 0 &&
    !state.held.some((held) => held.latch)
  );
}

/** What a pressed action changes, while its keys stay down or not; null where it does nothing that a route could use. */
export function afterAct(state: State, act: Act, keys: readonly number[], kept: boolean): State | null {
  switch (act.kind) {
    case 'modifiers':
      return kept ? withHeld(state, { keys, layers: 0, modifiers: act.set, latch: false }) : null;
    case 'layer':
      return afterLayer(state, 1 << act.layer, act.mode, keys, kept);
    case 'modifier':
      return afterModifier(state, act, keys, kept);
    default:
      return null;
  }
}

function withHeld(state: State, held: Held): State | null {
  const already = modifiersOn(state);
  const isNew = (held.layers & ~turnedOn(state)) !== 0 || (held.modifiers & ~bothSides(already)) !== 0;
  if (!isNew && !frees(state, held)) return null;
  return { ...state, held: [...state.held, held], fresh: state.fresh | (held.modifiers & ~already) };
}

/** Whether holding a layer once more lets the key that holds it now go, and do something else on that layer. */
function frees(state: State, held: Held): boolean {
  return held.layers !== 0 && state.held.filter((other) => other.layers === held.layers).length === 1;
}

/** A set with the other side's key of each of its modifiers: a second Shift is no use to anybody. */
function bothSides(set: ModifierSet): ModifierSet {
  return set | ((set & 0x55) << 1) | ((set & 0xaa) >> 1);
}

function afterLayer(
  state: State,
  layer: LayerSet,
  mode: 'while-held' | 'latch' | 'lock',
  keys: readonly number[],
  kept: boolean,
): State | null {
  if (mode === 'lock') return kept ? null : { ...state, lockedLayers: state.lockedLayers ^ layer };
  if (mode === 'latch' && state.held.some((held) => held.latch && held.layers === layer)) return null;
  if (mode === 'latch' && !kept) return { ...state, latchedLayers: state.latchedLayers ^ layer };
  return kept ? withHeld(state, { keys, layers: layer, modifiers: 0, latch: mode === 'latch' }) : null;
}

function afterModifier(
  state: State,
  act: { readonly set: ModifierSet; readonly mode: 'latch' | 'lock' },
  keys: readonly number[],
  kept: boolean,
): State | null {
  if (kept) {
    return act.mode === 'lock' ? null : withHeld(state, { keys, layers: 0, modifiers: act.set, latch: true });
  }
  if (act.mode === 'latch' && state.held.some((held) => held.latch && held.modifiers === act.set))
    return null;
  const on = act.mode === 'lock' ? state.lockedModifiers : state.latchedModifiers;
  const turnsOff = (on & act.set) !== 0;
  // Going off before a stroke came, it would be a bare tap: only a need of its own wants that.
  if (turnsOff && (state.fresh & act.set) !== 0) return null;
  const already = modifiersOn(state);
  if (!turnsOff && (act.set & ~bothSides(already)) === 0) return null;
  const fresh = turnsOff ? state.fresh : state.fresh | (act.set & ~already);
  return act.mode === 'lock'
    ? { ...state, lockedModifiers: on ^ act.set, fresh }
    : { ...state, latchedModifiers: on ^ act.set, fresh };
}

/** After strokes: latches are used up (L2 to L4), the modifiers that were on have served. */
export function afterStrokes(state: State, node: number): State {
  const held = state.held.some((each) => each.latch)
    ? state.held.map((each) => ({ ...each, latch: false }))
    : state.held;
  return { ...state, held, latchedLayers: 0, latchedModifiers: 0, fresh: 0, node };
}
