import { useBench } from '../../../../store/bench.ts';

/** Says that the figures are there for now only. */
export function sayNotKept(): void {
  const text = 'Your figures hold until the page is closed: the browser would not keep them.';
  useBench.getState().notify({ tone: 'warning', text, canUndo: false });
}
