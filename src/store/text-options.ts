import { READY_TEXTS } from '../core/needs/counts-table.ts';
import type { TextChoice } from './make-typist.ts';

/** The texts on offer; the own one only where there is one. */
export function textOptions(
  hasOwnText: boolean,
): readonly { readonly value: TextChoice; readonly label: string }[] {
  const ready = READY_TEXTS.map((name) => ({
    value: name,
    label: name === 'code' ? 'program code' : name.charAt(0).toUpperCase() + name.slice(1),
  }));
  return hasOwnText ? [{ value: 'own', label: 'my own text' }, ...ready] : ready;
}
