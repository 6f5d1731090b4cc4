import type { Action, Binding, Side } from '../keymap/types.ts';
import { canStayDown, chordCanStayDown } from './held-side.ts';
import type { LayerGrid } from './layer-grid.ts';
import type { ResolvedChord } from './resolved-chord.ts';

/** A place or a chord that turns a layer on. */
export interface EntryPoint {
  readonly id: number;
  /** Numbers of the keys that are pressed for it. */
  readonly keys: readonly number[];
  /** The layer whose binding it is; -1 for a chord. */
  readonly layer: number;
  readonly chord: ResolvedChord | null;
  /** The layer it turns on. */
  readonly target: number;
  readonly mode: 'while-held' | 'latch' | 'lock';
  /** False for the tap of a hold/tap key: it is on only for what comes before the key is up, or by way of other rules. */
  readonly steady: boolean;
}

/** Every place and chord that turns a layer on, places first, in document order; layers that do not exist are left out. */
export function entryPoints(grid: LayerGrid, chords: readonly ResolvedChord[]): readonly EntryPoint[] {
  const found: EntryPoint[] = [];
  const add = (
    action: Action | undefined,
    at: Pick<EntryPoint, 'keys' | 'layer' | 'chord' | 'steady'>,
  ): void => {
    if (action?.do !== 'layer') return;
    const target = grid.layerNumber.get(action.layer);
    if (target !== undefined && target > 0)
      found.push({ id: found.length, ...at, target, mode: action.mode });
  };
  grid.keymap.layers.forEach((layer, number) => {
    for (const [id, binding] of Object.entries(layer.places)) {
      const key = grid.keyNumber.get(id);
      if (key === undefined) continue;
      for (const side of ['tap', 'hold'] as const) {
        if (isFleeting(grid, binding, side)) continue;
        const steady = side === 'hold' || binding.hold === undefined;
        add(binding[side], { keys: [key], layer: number, chord: null, steady });
      }
    }
  });
  for (const chord of chords) {
    const { action, hold } = chord.chord;
    const at = { keys: chord.keys, layer: -1, chord };
    if (!isHeldFor(action) || chordCanStayDown(grid.keymap, chord.chord))
      add(action, { ...at, steady: hold === undefined });
    add(hold, { ...at, steady: true });
  }
  return found;
}

/** A layer that is on for no time, with no other key between, is never of use. */
function isFleeting({ keymap }: LayerGrid, binding: Binding, side: Side): boolean {
  return isHeldFor(binding[side]) && !canStayDown(keymap, binding, side);
}

function isHeldFor(action: Action | undefined): boolean {
  return action?.do === 'layer' && action.mode === 'while-held';
}

/** Whether a key takes part in an entry point: it stays down while that layer is held. */
export function usesKey(entry: EntryPoint, key: number): boolean {
  return entry.keys.includes(key);
}
