import type { KeyId } from '../../core/keymap/types.ts';
import type { Lit } from '../../store/bench-state.ts';
import { HELD, type KeyLight } from './order-badge.tsx';

/** How each lit key is lit; keys that are not have no entry. */
export function keyLights(lit: Lit | null): ReadonlyMap<KeyId, KeyLight> {
  const lights = new Map<KeyId, KeyLight>();
  if (lit === null) return lights;
  for (const key of lit.keys) lights.set(key, '');
  lit.order.forEach(({ key, held }, index) => {
    const step = `${index + 1}${held ? HELD : ''}`;
    lights.set(key, [lights.get(key) ?? '', step].filter((part) => part !== '').join(' '));
  });
  return lights;
}
