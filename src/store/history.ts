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
export function withStep(history: History, title: string, keymap: Keymap): History {
  const past = [...history.past, { title, keymap: history.keymap }].slice(-HISTORY_STEPS);
  return { keymap, past, future: [] };
}

/** The history one step back, or null where there is nothing to undo. */
export function undone(history: History): History | null {
  const step = history.past.at(-1);
  if (step === undefined) return null;
  const back: HistoryStep = { title: step.title, keymap: history.keymap };
  return { keymap: step.keymap, past: history.past.slice(0, -1), future: [back, ...history.future] };
}

/** The history one step on again, or null where there is nothing to redo. */
export function redone(history: History): History | null {
  const [step, ...rest] = history.future;
  if (step === undefined) return null;
  return {
    keymap: step.keymap,
    past: [...history.past, { title: step.title, keymap: history.keymap }],
    future: rest,
  };
}
