import { READY_TEXTS } from '../core/needs/counts-table.ts';
import type { TextChoice, TextWish } from './make-typist.ts';

/** The texts on offer; the own one only where there is one. `ofDesign`: the one that the design's languages ask for. */
export function textOptions(
  hasOwnText: boolean,
  ofDesign: TextChoice,
): readonly { readonly value: TextWish; readonly label: string }[] {
  return [
    ...(hasOwnText ? [{ value: 'own' as const, label: 'my own text' }] : []),
    { value: 'design', label: `as the design’s languages: ${titleOf(ofDesign)}` },
    ...READY_TEXTS.map((name) => ({ value: name, label: titleOf(name) })),
  ];
}

function titleOf(text: TextChoice): string {
  return text === 'code' ? 'program code' : text.charAt(0).toUpperCase() + text.slice(1);
}
