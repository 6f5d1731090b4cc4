import { type EntryPoint, entryPoints } from './layer-entry-points.ts';
import { effectiveLayer, has, highest, type LayerGrid, type LayerSet } from './layer-grid.ts';
import {
  canPress,
  isDown,
  type LayerMoves,
  type LayerState,
  pressed,
  released,
  stateKey,
  stateOf,
  staysOn,
  typed,
} from './layer-state.ts';
import { mayFireOn, type ResolvedChord } from './resolved-chord.ts';

/** States looked at before a search gives up; what it has not settled by then counts as reachable. */
const MOST_STATES = 2000;
const EVERY_LAYER: LayerSet = -1;

/** What can be on and what can be pressed, from a board at rest. */
export interface LayerReach {
  readonly entries: readonly EntryPoint[];
  /** The layers that can be on. */
  readonly entered: LayerSet;
  /** The layers that can be the highest that is on. */
  readonly onTop: LayerSet;
  /** Per key: the layers whose binding for it can take effect. */
  readonly reached: readonly LayerSet[];
  /** Per key: the layers whose binding would be in force, but for the key itself being down to hold a layer. */
  readonly downOn: readonly LayerSet[];
  /** Per chord, in document order: whether it can fire. */
  readonly fires: readonly boolean[];
  /** Latched or locked layers that cannot be turned off again. */
  readonly stuck: readonly StuckLayer[];
  /** Every state looked at, in the order of the search. */
  readonly states: readonly LayerState[];
}

/** A layer that stays on, and the state in which it first does, with no key down. */
export interface StuckLayer {
  readonly layer: number;
  readonly state: LayerState;
}

interface Marks {
  entered: LayerSet;
  onTop: LayerSet;
  readonly reached: LayerSet[];
  readonly downOn: LayerSet[];
  readonly fires: boolean[];
}

/** Searches the states of the layers from rest: what can be held, latched and locked, and what is then in force. */
export function layerReach(grid: LayerGrid, chords: readonly ResolvedChord[]): LayerReach {
  const moves: LayerMoves = { grid, chords, entries: entryPoints(grid, chords) };
  const { states, complete } = searchFromRest(moves);
  const marks = marksOf(moves, states);
  if (!complete) takeAllAsReached(marks);
  return { entries: moves.entries, ...marks, stuck: stuckLayers(moves, states), states };
}

/**
 * Explores the states. A press that was already possible in the state before is left out: what it turns on is reached
 * without the last move, and more layers can only cover. Layers that are on by condition need company, so presses that
 * may serve one are always tried; so are presses that turn something off.
 */
function searchFromRest(moves: LayerMoves): { states: readonly LayerState[]; complete: boolean } {
  const { grid, entries } = moves;
  const company = layersNeedingCompany(moves);
  const rest = stateOf(grid, [], 0, 0);
  const seen = new Set([stateKey(rest)]);
  const states: LayerState[] = [rest];
  const before: (LayerState | null)[] = [null];
  const visit = (state: LayerState | null, from: LayerState): void => {
    if (state === null) return;
    const key = stateKey(state);
    if (seen.has(key)) return;
    seen.add(key);
    states.push(state);
    before.push(from);
  };
  for (let index = 0; index < states.length && index < MOST_STATES; index++) {
    const state = states[index] ?? rest;
    const previous = before[index] ?? null;
    for (const entry of entries) {
      if (canPress(moves, state, entry) && isWorthTrying(moves, state, previous, entry, company)) {
        visit(pressed(grid, state, entry), state);
      }
    }
    for (const entry of state.held) visit(released(grid, state, entry), state);
    visit(typed(moves, state), state);
  }
  return { states: states.slice(0, MOST_STATES), complete: states.length <= MOST_STATES };
}

function isWorthTrying(
  moves: LayerMoves,
  state: LayerState,
  previous: LayerState | null,
  entry: EntryPoint,
  company: LayerSet,
): boolean {
  if (previous === null || !canPress(moves, previous, entry)) return true;
  if (entry.mode !== 'while-held' && staysOn(state, entry.target)) return true;
  return has(company, entry.target) && (company & state.on) !== 0;
}

/** The layers that others name as a condition, and all from which those are entered; without the base layer. */
function layersNeedingCompany({ grid, entries }: LayerMoves): LayerSet {
  let layers = 0;
  for (const layer of grid.keymap.layers) {
    for (const id of layer.onWhile ?? []) layers |= 1 << (grid.layerNumber.get(id) ?? 0);
  }
  for (let grown = 0; grown !== layers; ) {
    grown = layers;
    for (const entry of entries) {
      if (!has(layers, entry.target)) continue;
      layers |= entry.chord === null ? 1 << entry.layer : entry.chord.live;
    }
  }
  return layers & ~1;
}

function marksOf({ grid, chords }: LayerMoves, states: readonly LayerState[]): Marks {
  const marks: Marks = {
    entered: 1,
    onTop: 0,
    reached: grid.bound.map(() => 0),
    downOn: grid.bound.map(() => 0),
    fires: chords.map(() => false),
  };
  for (const state of states) {
    marks.entered |= state.on;
    marks.onTop |= 1 << highest(state.on);
    markKeys(grid, state, marks);
    markChords(chords, state, marks);
  }
  return marks;
}

function markKeys(grid: LayerGrid, state: LayerState, marks: Marks): void {
  for (let key = 0; key < grid.bound.length; key++) {
    const layer = effectiveLayer(grid, key, state.on);
    if (layer < 0) continue;
    const into = isDown(state, key) ? marks.downOn : marks.reached;
    into[key] = (into[key] ?? 0) | (1 << layer);
  }
}

function markChords(chords: readonly ResolvedChord[], state: LayerState, marks: Marks): void {
  const top = highest(state.on);
  chords.forEach((chord, order) => {
    if (marks.fires[order] === true || !has(chord.live, top)) return;
    if (chord.keys.some((key) => isDown(state, key))) return;
    marks.fires[order] = mayFireOn(chord, top, chords);
  });
}

function takeAllAsReached(marks: Marks): void {
  marks.entered = EVERY_LAYER;
  marks.onTop = EVERY_LAYER;
  marks.reached.fill(EVERY_LAYER);
  marks.fires.fill(true);
}

/** For each layer that a latch or lock turns on: whether any way leads off again from the first state that leaves it on. */
function stuckLayers(moves: LayerMoves, states: readonly LayerState[]): readonly StuckLayer[] {
  const staying = moves.entries.filter((entry) => entry.mode !== 'while-held').map((entry) => entry.target);
  return [...new Set(staying)]
    .sort((one, other) => one - other)
    .flatMap((layer) => {
      const state = states.find((each) => each.held.length === 0 && staysOn(each, layer));
      return state === undefined || canTurnOff(moves, state, layer) ? [] : [{ layer, state }];
    });
}

function canTurnOff(moves: LayerMoves, from: LayerState, layer: number): boolean {
  const seen = new Set([stateKey(from)]);
  const states = [from];
  for (let index = 0; index < states.length; index++) {
    const state = states[index] ?? from;
    if (!staysOn(state, layer) || index >= MOST_STATES) return true;
    for (const next of nextStates(moves, state)) {
      const key = stateKey(next);
      if (!seen.has(key)) states.push(next);
      seen.add(key);
    }
  }
  return false;
}

/** Every state one move away; presses of the layer's own keys come as they stand in the document. */
function nextStates(moves: LayerMoves, state: LayerState): readonly LayerState[] {
  const presses = moves.entries
    .filter((entry) => canPress(moves, state, entry))
    .map((entry) => pressed(moves.grid, state, entry));
  const releases = state.held.map((entry) => released(moves.grid, state, entry));
  const after = typed(moves, state);
  return [...presses, ...releases, ...(after === null ? [] : [after])];
}
