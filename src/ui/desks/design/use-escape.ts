import { useEffect } from 'react';
import { useBench } from '../../../store/bench.ts';

/**
 * Escape lets go of what is carried, wherever the focus is. A dialog, a card or a field that has its own use for the
 * key has it first.
 */
export function useEscape(): void {
  useEffect(() => {
    const pressed = (event: KeyboardEvent) => {
      if (event.key !== 'Escape' || event.defaultPrevented) return;
      if (document.querySelector('dialog[open]') !== null) return;
      const { carried, carry } = useBench.getState();
      if (carried !== null) carry(null);
    };
    document.addEventListener('keydown', pressed);
    return () => document.removeEventListener('keydown', pressed);
  }, []);
}
