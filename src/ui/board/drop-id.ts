import type { KeyId, Side } from '../../core/keymap/types.ts';
import type { Target } from '../../store/bench-state.ts';

/** The id under which half of a key takes what is dropped on it. */
export function dropId({ key, side }: Target): string {
  return `key:${key}:${side}`;
}

/** The id under which a key's binding is dragged. */
export function bindingDragId(key: KeyId): string {
  return `binding:${key}`;
}

/** The half of a key that an element or one of its parents belongs to; null off the keys. */
export function targetOf(element: Element | null): Target | null {
  const side = element?.closest('[data-side]')?.getAttribute('data-side');
  const key = element?.closest('[data-key]')?.getAttribute('data-key');
  return key !== undefined && key !== null && isSide(side) ? { key, side } : null;
}

function isSide(text: string | null | undefined): text is Side {
  return text === 'tap' || text === 'hold';
}
