import { MOST_STATES } from './layer-search.ts';
import {
  canPress,
  type LayerMoves,
  type LayerState,
  released,
  stateKey,
  statesByPress,
  staysOn,
  typed,
} from './layer-state.ts';

/** A layer that stays on, and the state in which it first does, with no key down. */
export interface StuckLayer {
  readonly layer: number;
  readonly state: LayerState;
}

/** For each layer that a latch or lock turns on: whether any way leads off again from the first state that leaves it on. */
export function stuckLayers(moves: LayerMoves, states: readonly LayerState[]): readonly StuckLayer[] {
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

/** Every state one move away. */
function nextStates(moves: LayerMoves, state: LayerState): readonly LayerState[] {
  const presses = moves.entries
    .filter((entry) => canPress(moves, state, entry))
    .flatMap((entry) => statesByPress(moves, state, entry));
  const releases = state.held.map((entry) => released(moves.grid, state, entry));
  const after = typed(moves, state);
  return [...presses, ...releases, ...(after === null ? [] : [after])];
}
