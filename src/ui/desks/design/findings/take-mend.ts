import { createContext, useCallback, useEffect, useRef } from 'react';
import type { Finding, Mend } from '../../../../core/findings/find.ts';
import { useBench } from '../../../../store/bench.ts';

/** Takes a mend of a finding in the list; `also` is a sentence that its notice says besides. */
type Take = (mend: Mend, also?: string) => void;

export const TakeMend = createContext<Take>(() => {});

/** A way to take a mend as one step; as soon as its findings are known, a notice says what was done and what is left. */
export function useTakeMend(findings: readonly Finding[]): Take {
  const taken = useRef<{ readonly mend: Mend; readonly also: string } | null>(null);
  useEffect(() => {
    const last = taken.current;
    taken.current = null;
    if (last !== null) tell(last.mend, last.also, findings.length);
  }, [findings]);
  return useCallback((mend, also = '') => {
    const { keymap, edit } = useBench.getState();
    edit({ edit: 'several', title: mend.title, edits: mend.edits });
    if (useBench.getState().keymap !== keymap) taken.current = { mend, also };
  }, []);
}

function tell({ title }: Mend, also: string, left: number): void {
  const { notices, notify, dismiss } = useBench.getState();
  // An edit that takes others along has said so by itself: one notice says it all.
  const told = notices.find(({ canUndo }) => canUndo);
  if (told !== undefined) dismiss(told.id);
  const said = [told?.text ?? `${title}: done.`, also, leftInWords(left)].filter((each) => each !== '');
  notify({ tone: 'done', text: said.join(' '), canUndo: true });
}

/** How many findings are left, as a sentence. */
export function leftInWords(left: number): string {
  if (left === 0) return 'No findings are left.';
  return left === 1 ? 'One finding is left.' : `${left} findings are left.`;
}
