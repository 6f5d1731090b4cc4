import type { EntryPoint } from './layer-entry-points.ts';
import { has, type LayerSet } from './layer-grid.ts';
import {
  canPress,
  type LayerMoves,
  type LayerState,
  released,
  stateKey,
  stateOf,
  statesByPress,
  staysOn,
  typed,
} from './layer-state.ts';

/** States looked at before a search gives up; what it has not settled by then counts as reachable. */
export const MOST_STATES = 2000;

/** A state and the one it was first reached from, null for the board at rest. */
interface Visit {
  readonly state: LayerState;
  readonly from: LayerState | null;
}

/**
 * Explores the states from rest, in the order of the number of moves. A press that was already possible in the state
 * before is left out: what it turns on is reached without the last move, and more layers can only cover. Layers that
 * are on by condition need company, so presses that may serve one are always tried; so are presses that turn something
 * off. Not complete: there were more states than are looked at.
 */
export function searchFromRest(moves: LayerMoves): {
  readonly states: readonly LayerState[];
  readonly complete: boolean;
} {
  const company = layersNeedingCompany(moves);
  const rest = stateOf(moves.grid, [], 0, 0);
  const seen = new Set([stateKey(rest)]);
  const visits: Visit[] = [{ state: rest, from: null }];
  for (let index = 0; index < visits.length && index < MOST_STATES; index++) {
    const visit = visits[index];
    if (visit === undefined) break;
    for (const state of statesAfter(moves, visit, company)) {
      const key = stateKey(state);
      if (!seen.has(key)) visits.push({ state, from: visit.state });
      seen.add(key);
    }
  }
  const states = visits.slice(0, MOST_STATES).map(({ state }) => state);
  return { states, complete: visits.length <= MOST_STATES };
}

function statesAfter(moves: LayerMoves, visit: Visit, company: LayerSet): readonly LayerState[] {
  const { state } = visit;
  const presses = moves.entries
    .filter((entry) => canPress(moves, state, entry) && isWorthTrying(moves, visit, entry, company))
    .flatMap((entry) => statesByPress(moves, state, entry));
  const releases = state.held.map((entry) => released(moves.grid, state, entry));
  const after = typed(moves, state);
  return [...presses, ...releases, ...(after === null ? [] : [after])];
}

function isWorthTrying(
  moves: LayerMoves,
  { state, from }: Visit,
  entry: EntryPoint,
  company: LayerSet,
): boolean {
  if (from === null || !canPress(moves, from, entry)) return true;
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
