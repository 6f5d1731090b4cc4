import { type ReactNode, useContext, useDeferredValue, useMemo } from 'react';
import { AnalysisAround, analysisOf } from './analysis.ts';
import { useBench } from './bench.ts';
import { useHost } from './hosts.ts';
import { useFindList } from './need-lists.ts';

/**
 * Within it the analysis of the open design follows an edit as soon as the edit itself has been drawn, so that the board
 * never waits for it. Until then `useAnalysis` gives the one of before, with the keymap that it is about.
 */
export function AnalysisAfterEdit({ children }: { readonly children: ReactNode }) {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const findList = useFindList();
  const asked = useMemo(() => ({ keymap, host, findList }), [keymap, host, findList]);
  const due = useDeferredValue(asked);
  const analysis = analysisOf(due.keymap, due.host, due.findList);
  return <AnalysisAround value={analysis}>{children}</AnalysisAround>;
}

/** Whether what `useAnalysis` gives is about the design as it is now. */
export function useAnalysisIsNow(): boolean {
  const around = useContext(AnalysisAround);
  return useBench((bench) => around === null || around.facts.keymap === bench.keymap);
}
