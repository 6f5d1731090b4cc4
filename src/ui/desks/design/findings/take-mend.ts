import { createContext, useCallback, useEffect, useRef } from 'react';
import type { Finding, Mend } from '../../../../core/findings/find.ts';
import { useBench } from '../../../../store/bench.ts';

/** Takes a mend of a finding in the list. */
export const TakeMend = createContext<(mend: Mend) => void>(() => {});

/** A way to take a mend as one step; as soon as its findings are known, a notice says what was done and what is left. */
export function useTakeMend(findings: readonly Finding[]): (mend: Mend) => void {
  const taken = useRef<Mend | null>(null);
  useEffect(() => {
    const mend = taken.current;
    taken.current = null;
    if (mend !== null) tell(mend, findings.length);
  }, [findings]);
  return useCallback((mend) => {
    const { keymap, edit } = useBench.getState();
    edit({ edit: 'several', title: mend.title, edits: mend.edits });
    if (useBench.getState().keymap !== keymap) taken.current = mend;
  }, []);
}

function tell({ title }: Mend, left: number): void {
  const { notices, notify, dismiss } = useBench.getState();
  // An edit that takes others along has said so by itself: one notice says it all.
  const told = notices.find(({ canUndo }) => canUndo);
  if (told !== undefined) dismiss(told.id);
  notify({ tone: 'done', text: `${told?.text ?? `${title}: done.`} ${leftInWords(left)}`, canUndo: true });
}

/** How many findings are left, as a sentence. */
export function leftInWords(left: number): string {
  if (left === 0) return 'No findings are left.';
  return left === 1 ? 'One finding is left.' : `${left} findings are left.`;
}
