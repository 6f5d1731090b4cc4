import type { Saving } from '../../store/keeping/saver.ts';

/** What the header says about the keeping of the open design. */
export function savingText(
  saving: Saving,
  readOnly: boolean,
): { readonly text: string; readonly isBad: boolean } {
  if (readOnly) return { text: 'Only to look at', isBad: false };
  if (saving.state === 'failed') {
    return { text: `Not saved: ${saving.why} Export it to be safe.`, isBad: true };
  }
  return { text: saving.state === 'saved' ? 'Saved' : 'Saving…', isBad: false };
}
