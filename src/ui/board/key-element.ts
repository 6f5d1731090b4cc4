import type { KeyId } from '../../core/keymap/types.ts';

/** The drawn key of that id, for the focus and for what stands beside it. */
export function elementOfKey(svg: SVGSVGElement | null, key: KeyId): SVGElement | null {
  return svg?.querySelector<SVGElement>(`[data-key="${CSS.escape(key)}"]`) ?? null;
}
