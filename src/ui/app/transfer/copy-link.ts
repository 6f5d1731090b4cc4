import { ok, type Result } from '../../../core/base/result.ts';
import type { Keymap } from '../../../core/keymap/types.ts';
import { useBench } from '../../../store/bench.ts';
import { fragmentOfDesign } from '../../../store/link/design-link.ts';
import { copiedLinkWords } from './link-words.ts';

/** The address of this page with a whole design in its fragment; a sentence where the design is too large for one. */
export async function linkTo(keymap: Keymap): Promise<Result<string, string>> {
  const fragment = await fragmentOfDesign(keymap);
  return fragment.ok ? ok(`${location.href.replace(/#.*$/s, '')}#${fragment.value}`) : fragment;
}

/** Puts a link to the open design on the clipboard, and says so. */
export async function copyLink(): Promise<void> {
  const { keymap, notify } = useBench.getState();
  const link = await linkTo(keymap);
  if (!link.ok) return notify({ tone: 'refused', text: link.problem, canUndo: false });
  try {
    await navigator.clipboard.writeText(link.value);
    notify({ tone: 'done', text: copiedLinkWords(link.value.length), canUndo: false });
  } catch {
    const text = 'The browser does not let this page write to the clipboard. “Export” shows the link itself.';
    notify({ tone: 'refused', text, canUndo: false });
  }
}
