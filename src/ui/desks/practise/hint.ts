import type { Keymap, LayerId } from '../../../core/keymap/types.ts';
import { layerOfDeed } from '../../../core/practice/deed.ts';
import type { Ways } from '../../../core/practice/ways.ts';
import type { Lit } from '../../../store/bench-state.ts';

/** A hint: the layer to look at, the keys in order, and the same in words. */
export interface Hint {
  readonly layer: LayerId;
  readonly lit: Lit;
  readonly words: string;
}

/** The way to a need as a hint; null where there is none. */
export function hintFor(need: string, keymap: Keymap, ways: Ways): Hint | null {
  const way = ways.of(need);
  const route = ways.routeOf(need);
  if (way === null || route === null) return null;
  const order = route.steps.flatMap((step) =>
    step.move === 'release' ? [] : step.keys.map((key) => ({ key, held: step.move === 'hold' })),
  );
  const last = way.typing.at(-1);
  const layer = (last && layerOfDeed(keymap, last)) ?? keymap.layers[0]?.id ?? '';
  const keys = [...new Set(order.map(({ key }) => key))];
  return { layer, words: way.known.words, lit: { why: '', keys, chords: [], layers: [], order } };
}
