import type { Facts } from './facts.ts';
import { type LayerSet, numbersIn } from './layer-grid.ts';
import { type ResolvedChord, sameKeys } from './resolved-chord.ts';

/** The chords that are live on one layer and no other. */
export function chordsLiveOnlyOn({ chords }: Facts, layer: number): readonly ResolvedChord[] {
  return chords.filter((chord) => chord.live === 1 << layer);
}

/** The layers on which both of two chords are live. */
export function sharedLayers(one: ResolvedChord, other: ResolvedChord): LayerSet {
  return one.live & other.live;
}

/** Whether another chord has the same keys on one of its layers: which of them fires is a matter of both their timings. */
export function isRivalled({ chords }: Facts, chord: ResolvedChord): boolean {
  return chords.some(
    (other) => other !== chord && sameKeys(other, chord) && sharedLayers(other, chord) !== 0,
  );
}

/** The ids of a set of layers. */
export function layerIds({ keymap }: Facts, layers: LayerSet): readonly string[] {
  return numbersIn(layers).flatMap((number) => keymap.layers[number]?.id ?? []);
}

/** The names of a set of layers. */
export function layerNames({ keymap }: Facts, layers: LayerSet): readonly string[] {
  return numbersIn(layers).flatMap((number) => keymap.layers[number]?.name ?? []);
}
