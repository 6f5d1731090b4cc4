import type { Keymap } from '../../core/keymap/types.ts';

/** What the stream is played on besides: nothing, the design without what is tried, or another design. */
export type Compared =
  | { readonly with: 'nothing' }
  | { readonly with: 'design as it is' }
  | { readonly with: 'another design'; readonly id: string; readonly title: string; readonly keymap: Keymap };

/** One run alone. */
export const NOTHING_COMPARED: Compared = { with: 'nothing' };
