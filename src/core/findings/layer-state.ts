import { isModifier } from '../keymap/codes.ts';
import type { Action } from '../keymap/types.ts';
import { type EntryPoint, usesKey } from './layer-entry-points.ts';
import {
  bindingAt,
  effectiveLayer,
  has,
  highest,
  type LayerGrid,
  type LayerSet,
  withConditions,
} from './layer-grid.ts';
import { mayFireOn, type ResolvedChord } from './resolved-chord.ts';

/** Which layers are on, and why: the keys that hold them, the unused latches and the locks. */
export interface LayerState {
  /** Entry points that are down, by their id ascending. */
  readonly held: readonly EntryPoint[];
  readonly latched: LayerSet;
  readonly locked: LayerSet;
  /** All layers that are on, those by condition and the base layer among them. */
  readonly on: LayerSet;
}

/** What the moves between states need to know of a design. */
export interface LayerMoves {
  readonly grid: LayerGrid;
  readonly chords: readonly ResolvedChord[];
  readonly entries: readonly EntryPoint[];
}

/** The state with these keys down, latches and locks. */
export function stateOf(
  grid: LayerGrid,
  held: readonly EntryPoint[],
  latched: LayerSet,
  locked: LayerSet,
): LayerState {
  const holds = held.reduce((layers, entry) => layers | (1 << entry.target), 0);
  return { held, latched, locked, on: withConditions(grid, holds | latched | locked) };
}

/** A text that is the same for the same state. */
export function stateKey(state: LayerState): string {
  return `${state.held.map((entry) => entry.id).join(' ')}|${state.latched}|${state.locked}`;
}

/** Whether a key is down in a state, because it holds a layer. */
export function isDown(state: LayerState, key: number): boolean {
  return state.held.some((entry) => usesKey(entry, key));
}

/** Whether an entry point can be pressed in a state: its keys are up, and its place is the one in force there. */
export function canPress({ grid, chords }: LayerMoves, state: LayerState, entry: EntryPoint): boolean {
  if (entry.keys.some((key) => isDown(state, key))) return false;
  if (entry.chord !== null) return mayFireOn(entry.chord, highest(state.on), chords);
  return entry.keys.every((key) => effectiveLayer(grid, key, state.on) === entry.layer);
}

/**
 * The state after an entry point is pressed. A latch or lock key comes up again at once (the layer stays on without
 * it); a second press of it turns the layer off (rules A5 and L1).
 */
function pressed(grid: LayerGrid, state: LayerState, entry: EntryPoint): LayerState {
  const bit = 1 << entry.target;
  if (entry.mode === 'lock') return stateOf(grid, state.held, state.latched, state.locked ^ bit);
  if (entry.mode === 'latch') return stateOf(grid, state.held, state.latched ^ bit, state.locked);
  return stateOf(grid, withEntry(state.held, entry), state.latched, state.locked);
}

/**
 * The state in which a latch's key is still down and the latch was used meanwhile: it goes off with its key (rule L3),
 * and other latches are used up. Null for what is no latch, and where nothing can be typed.
 */
function pressedAndUsed(moves: LayerMoves, state: LayerState, entry: EntryPoint): LayerState | null {
  if (entry.mode !== 'latch' || has(state.latched, entry.target)) return null;
  const held = withEntry(state.held, entry);
  const down = stateOf(moves.grid, held, state.latched, state.locked);
  return canType(moves, down) ? stateOf(moves.grid, held, 0, state.locked) : null;
}

function withEntry(held: readonly EntryPoint[], entry: EntryPoint): readonly EntryPoint[] {
  return [...held, entry].sort((one, other) => one.id - other.id);
}

/** Every state that pressing an entry point can lead to; it must be one that can be pressed. */
export function statesByPress(
  moves: LayerMoves,
  state: LayerState,
  entry: EntryPoint,
): readonly LayerState[] {
  const used = pressedAndUsed(moves, state, entry);
  return [pressed(moves.grid, state, entry), ...(used === null ? [] : [used])];
}

/** The state after an entry point that is down comes up. */
export function released(grid: LayerGrid, state: LayerState, entry: EntryPoint): LayerState {
  const held = state.held.filter((other) => other !== entry);
  return stateOf(grid, held, state.latched, state.locked);
}

/** The state after something is typed, which uses up the latches (rule L2); null where nothing can be typed. */
export function typed(moves: LayerMoves, state: LayerState): LayerState | null {
  if (state.latched === 0 || !canType(moves, state)) return null;
  return stateOf(moves.grid, state.held, 0, state.locked);
}

function canType({ grid, chords }: LayerMoves, state: LayerState): boolean {
  const key = grid.bound.findIndex((_, number) => {
    const layer = effectiveLayer(grid, number, state.on);
    if (layer < 0 || isDown(state, number)) return false;
    const binding = bindingAt(grid, number, layer);
    return types(binding?.tap) || types(binding?.hold);
  });
  if (key >= 0) return true;
  const top = highest(state.on);
  return chords.some(
    (chord) =>
      (types(chord.chord.action) || types(chord.chord.hold)) &&
      chord.keys.every((number) => !isDown(state, number)) &&
      mayFireOn(chord, top, chords),
  );
}

function types(action: Action | undefined): boolean {
  if (action?.do === 'key') return !isModifier(action.code);
  return action?.do === 'char' || action?.do === 'text';
}

/** Whether a layer stays on without a key being held. */
export function staysOn(state: LayerState, layer: number): boolean {
  return has(state.latched | state.locked, layer);
}
