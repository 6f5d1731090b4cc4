import { samePlain } from '../base/same-plain.ts';
import { bindingOn } from '../keymap/lookup.ts';
import { timingOf } from '../keymap/timing.ts';
import type { Binding, Chord, KeyId, Keymap, Layer, Timing } from '../keymap/types.ts';
import { type BoardChange, boardChanges } from './board-changes.ts';
import { type DesignChanges, designChanges } from './design-changes.ts';
import { type LayerChange, layerChanges } from './layer-changes.ts';
import { withLayerIds } from './layer-ids.ts';
import { matchedChords, matchedLayers, type Pair } from './match.ts';

/** A key that does something else on a layer. Null: it falls through there, or the layer is not there. */
export interface PlaceChange {
  readonly key: KeyId;
  readonly layer: Pair<Layer>;
  readonly before: Binding | null;
  readonly after: Binding | null;
}

/** All that differs between two designs as documents. */
export interface Comparison {
  /** The earlier design, its layers under the ids that the same layers have in the later one. */
  readonly before: Keymap;
  readonly after: Keymap;
  readonly board: readonly BoardChange[];
  readonly layers: readonly LayerChange[];
  readonly places: readonly PlaceChange[];
  readonly chords: readonly Pair<Chord>[];
  readonly design: DesignChanges;
}

/**
 * What differs between two designs. Keys are the same by their id; for layers and chords see `match.ts`. Places come
 * layer by layer from the base up, keys in the order of the later board and then of the earlier one.
 */
export function compareKeymaps(earlier: Keymap, after: Keymap): Comparison {
  const same = matchedLayers(earlier, after).flatMap(({ before, after: now }): [string, string][] =>
    before !== null && now !== null ? [[before.id, now.id]] : [],
  );
  const before = withLayerIds(earlier, new Map(same));
  const pairs = matchedLayers(before, after);
  return {
    before,
    after,
    board: boardChanges(before.board, after.board),
    layers: layerChanges(before.layers, pairs),
    places: pairs.flatMap((pair) => placeChanges(before, after, pair)),
    chords: matchedChords(before, after).filter((pair) => !sameChord(pair)),
    design: designChanges(before, after),
  };
}

/** Whether nothing at all differs. */
export function isSame({ board, layers, places, chords, design }: Comparison): boolean {
  return [board, layers, places, chords, design.what, design.needsAdded, design.needsGone].every(
    ({ length }) => length === 0,
  );
}

function placeChanges(before: Keymap, after: Keymap, layer: Pair<Layer>): readonly PlaceChange[] {
  const keys = new Set([...after.board.keys, ...before.board.keys].map(({ id }) => id));
  return [...keys].flatMap((key): PlaceChange[] => {
    const was = layer.before === null ? undefined : bindingOn(layer.before, key);
    const is = layer.after === null ? undefined : bindingOn(layer.after, key);
    if (sameBinding(before, was, after, is)) return [];
    return [{ key, layer, before: was ?? null, after: is ?? null }];
  });
}

/** Timing counts where it is in force: it settles between tap and hold, so it needs both. */
function sameBinding(
  before: Keymap,
  one: Binding | undefined,
  after: Keymap,
  other: Binding | undefined,
): boolean {
  if (one === undefined || other === undefined) return one === other;
  const sides = ({ tap, onShift, hold }: Binding) => [tap, onShift, hold];
  if (!samePlain(sides(one), sides(other))) return false;
  if (one.tap === undefined || one.hold === undefined) return true;
  return (
    samePlain(ownTiming(one), ownTiming(other)) || samePlain(timingOf(before, one), timingOf(after, other))
  );
}

function ownTiming({ tap: _tap, onShift: _onShift, hold: _hold, ...timing }: Binding): Timing {
  return timing;
}

function sameChord({ before, after }: Pair<Chord>): boolean {
  const plain = (chord: Chord | null) =>
    chord === null
      ? null
      : {
          ...chord,
          id: '',
          keys: chord.keys.toSorted(),
          layers: chord.layers?.toSorted(),
          name: chord.name,
          quietBeforeMs: chord.quietBeforeMs ?? 0,
          release: chord.release ?? 'first-up',
        };
  return samePlain(plain(before), plain(after));
}
