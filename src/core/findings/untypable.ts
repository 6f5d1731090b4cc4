import type { HostLayout } from '../host/host-layout.ts';
import type { Action } from '../keymap/types.ts';

const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });

/** The grapheme clusters of a text in NFC (Unicode Standard Annexes 15 and 29). */
export function clustersOf(text: string): readonly string[] {
  return [...segmenter.segment(text.normalize('NFC'))].map(({ segment }) => segment);
}

/** The characters of an action that the host layout has no strokes for, each once. */
export function untypable(host: HostLayout, action: Action): readonly string[] {
  if (action.do !== 'char' && action.do !== 'text') return [];
  const chars = action.do === 'char' ? [action.char] : clustersOf(action.text);
  return [...new Set(chars)].filter((char) => host.routesOf(char).length === 0);
}
