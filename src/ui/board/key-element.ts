import type { KeyId } from '../../core/keymap/types.ts';

/** The drawn key of that id, for the focus and for what stands beside it. */
export function elementOfKey(svg: SVGSVGElement | null, key: KeyId): SVGElement | null {
  return svg?.querySelector<SVGElement>(`[data-key="${CSS.escape(key)}"]`) ?? null;
}

/** Moves the focus to the key of the board at which Tab stops, for what goes on there. */
export function focusBoard(): void {
  document.querySelector<SVGElement>('[data-key][tabindex="0"]')?.focus();
}
