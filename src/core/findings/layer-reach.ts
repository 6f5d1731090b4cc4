import { type EntryPoint, entryPoints } from './layer-entry-points.ts';
import { effectiveLayer, has, highest, type LayerGrid, type LayerSet } from './layer-grid.ts';
import { searchFromRest } from './layer-search.ts';
import { isDown, type LayerMoves, type LayerState } from './layer-state.ts';
import { mayFireOn, type ResolvedChord } from './resolved-chord.ts';
import { type StuckLayer, stuckLayers } from './stuck-layers.ts';

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

interface Marks {
  entered: LayerSet;
  onTop: LayerSet;
  readonly reached: LayerSet[];
  readonly downOn: LayerSet[];
  readonly fires: boolean[];
}

/**
 * Searches the states of the layers from rest: what can be held, latched and locked, and what is then in force. What
 * comes of keys only because an undecided hold/tap key keeps stage 2 behind stage 1 is left out: a chord may then be
 * looked for on a layer whose key is up already, which nobody does on purpose.
 */
export function layerReach(grid: LayerGrid, chords: readonly ResolvedChord[]): LayerReach {
  const moves: LayerMoves = { grid, chords, entries: entryPoints(grid, chords) };
  const { states, complete } = searchFromRest(moves);
  const marks = marksOf(moves, states);
  if (!complete) takeAllAsReached(marks);
  return { entries: moves.entries, ...marks, stuck: stuckLayers(moves, states), states };
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
