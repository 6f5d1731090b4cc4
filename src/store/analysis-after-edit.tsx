import { type ReactNode, startTransition, useContext, useEffect, useMemo, useState } from 'react';
import { AnalysisAround, analysisOf } from './analysis.ts';
import { useBench } from './bench.ts';
import { useHost } from './hosts.ts';
import { useFindList } from './need-lists.ts';

/**
 * Within it the analysis of the open design follows an edit as soon as the edit itself has been painted, so that the board
 * never waits for it. Until then `useAnalysis` gives the one of before, with the keymap that it is about.
 */
export function AnalysisAfterEdit({ children }: { readonly children: ReactNode }) {
  const keymap = useBench((bench) => bench.keymap);
  const { host } = useHost(keymap);
  const findList = useFindList();
  const asked = useMemo(() => ({ keymap, host, findList }), [keymap, host, findList]);
  const due = useOncePainted(asked);
  const analysis = analysisOf(due.keymap, due.host, due.findList);
  return <AnalysisAround value={analysis}>{children}</AnalysisAround>;
}

/** What was handed in last and has been painted since. A deferred value would come before the paint where there is time. */
function useOncePainted<Value>(value: Value): Value {
  const [painted, setPainted] = useState(value);
  useEffect(() => afterPaint(() => startTransition(() => setPainted(() => value))), [value]);
  return painted;
}

/** Without frames, as in a tab that is hidden, it goes on after this, ms. */
const NO_FRAME_MS = 300;

/** Runs something once after the next frame; the function that comes back calls it off. */
function afterPaint(run: () => void): () => void {
  let task = setTimeout(run, NO_FRAME_MS);
  const frame = requestAnimationFrame(() => {
    clearTimeout(task);
    // What is asked for within a frame still comes before its paint, a task comes after it.
    task = setTimeout(run);
  });
  return () => {
    cancelAnimationFrame(frame);
    clearTimeout(task);
  };
}

/** Whether what `useAnalysis` gives is about the design as it is now. */
export function useAnalysisIsNow(): boolean {
  const around = useContext(AnalysisAround);
  return useBench((bench) => around === null || around.facts.keymap === bench.keymap);
}
