import { type KeyRenaming, keyRenaming, reversed } from '../core/board/key-renaming.ts';
import type { Keymap } from '../core/keymap/types.ts';
import type { HistoryStep } from './bench-state.ts';

/** How many steps can be undone; the oldest drops out beyond it. A step shares all it can with its neighbours. */
export const HISTORY_STEPS = 1000;

/** A keymap with the steps that led to it (oldest first) and those taken back (next to redo first). */
export interface History {
  readonly keymap: Keymap;
  readonly past: readonly HistoryStep[];
  readonly future: readonly HistoryStep[];
}

/** The history after one more step; what had been taken back can no longer be redone. */
export function withStep(
  history: History,
  title: string,
  keymap: Keymap,
  became?: HistoryStep['became'],
): History {
  const step = { title, keymap: history.keymap, ...(became && { became }) };
  const past = [...history.past, step].slice(-HISTORY_STEPS);
  return { keymap, past, future: [] };
}

/** The history one step back, or null where there is nothing to undo. */
export function undone(history: History): History | null {
  const step = history.past.at(-1);
  if (step === undefined) return null;
  const back: HistoryStep = { ...step, keymap: history.keymap };
  return { keymap: step.keymap, past: history.past.slice(0, -1), future: [back, ...history.future] };
}

/** The history one step on again, or null where there is nothing to redo. */
export function redone(history: History): History | null {
  const [step, ...rest] = history.future;
  if (step === undefined) return null;
  return {
    keymap: step.keymap,
    past: [...history.past, { ...step, keymap: history.keymap }],
    future: rest,
  };
}

/** What undoing the last step would call keys; null where it leaves them. */
export function renamingOfUndo({ keymap, past }: History): KeyRenaming | null {
  const step = past.at(-1);
  return step?.became ? reversed(keyRenaming(step.keymap.board, keymap.board, step.became)) : null;
}

/** What redoing the next step would call keys; null where it leaves them. */
export function renamingOfRedo({ keymap, future: [step] }: History): KeyRenaming | null {
  return step?.became ? keyRenaming(keymap.board, step.keymap.board, step.became) : null;
}
