import type { KeyId, Keymap, LayerId } from '../../../core/keymap/types.ts';
import { layerOfDeed } from '../../../core/practice/deed.ts';
import type { Ways } from '../../../core/practice/ways.ts';
import type { Step } from '../../../core/routes/types.ts';
import { HELD, type KeyLight } from '../../board/order-badge.tsx';

/** A hint: the layer to look at, each key with the numbers of its steps, and the same in words. */
export interface Hint {
  readonly layer: LayerId;
  readonly lights: ReadonlyMap<KeyId, KeyLight>;
  readonly words: string;
}

/** The way to a need as a hint; null where there is none. */
export function hintFor(need: string, keymap: Keymap, ways: Ways): Hint | null {
  const way = ways.of(need);
  const route = ways.routeOf(need);
  if (way === null || route === null) return null;
  const last = way.typing.at(-1);
  const layer = (last && layerOfDeed(keymap, last)) ?? keymap.layers[0]?.id ?? '';
  return { layer, words: way.known.words, lights: lightsOf(route.steps) };
}

/** The keys of a chord go down together: they share one number. */
function lightsOf(steps: readonly Step[]): ReadonlyMap<KeyId, KeyLight> {
  const lights = new Map<KeyId, KeyLight>();
  const presses = steps.filter((step) => step.move !== 'release');
  for (const [index, { move, keys }] of presses.entries())
    for (const key of keys) {
      const number = `${index + 1}${move === 'hold' ? HELD : ''}`;
      const before = lights.get(key);
      lights.set(key, before === undefined ? number : `${before} ${number}`);
    }
  return lights;
}
