import { samePlain } from '../base/same-plain.ts';
import type { Layer } from '../keymap/types.ts';
import type { Pair } from './match.ts';

/** What became of a layer as a whole; one layer may appear more than once. */
export interface LayerChange {
  readonly what: 'added' | 'gone' | 'renamed' | 'comes on otherwise' | 'moved';
  readonly layer: Pair<Layer>;
}

/** What became of the layers; `before` is the stack as it was, `pairs` are in the order of the stack as it is now. */
export function layerChanges(
  before: readonly Layer[],
  pairs: readonly Pair<Layer>[],
): readonly LayerChange[] {
  const stayed = pairs.filter((pair) => pair.before !== null && pair.after !== null);
  const places = new Map<Layer | null, number>(before.map((layer, at) => [layer, at]));
  const rising = longestRising(stayed.map((pair) => places.get(pair.before) ?? -1));
  const moved = new Set(stayed.filter((_, at) => !rising.has(at)));
  return pairs.flatMap((layer): LayerChange[] => {
    if (layer.before === null) return [{ what: 'added', layer }];
    if (layer.after === null) return [{ what: 'gone', layer }];
    const what: LayerChange['what'][] = [];
    if (layer.before.name !== layer.after.name) what.push('renamed');
    if (!samePlain(layer.before.onWhile?.toSorted(), layer.after.onWhile?.toSorted()))
      what.push('comes on otherwise');
    if (moved.has(layer)) what.push('moved');
    return what.map((each) => ({ what: each, layer }));
  });
}

/**
 * Which of the numbers make the longest rising row: the fewest others have to move to put all in order. Of several such
 * rows the one that ends first, so that of two neighbours the one now in front counts as moved.
 */
function longestRising(numbers: readonly number[]): ReadonlySet<number> {
  const lengths: number[] = [];
  const from: number[] = [];
  let best = -1;
  numbers.forEach((number, at) => {
    lengths[at] = 1;
    from[at] = -1;
    for (let earlier = 0; earlier < at; earlier++) {
      const length = (lengths[earlier] ?? 0) + 1;
      if ((numbers[earlier] ?? 0) >= number || length <= (lengths[at] ?? 0)) continue;
      lengths[at] = length;
      from[at] = earlier;
    }
    if (best < 0 || (lengths[at] ?? 0) > (lengths[best] ?? 0)) best = at;
  });
  const row = new Set<number>();
  for (let at = best; at >= 0; at = from[at] ?? -1) row.add(at);
  return row;
}
