import { useEffect } from 'react';
import { useBench } from '../../../store/bench.ts';
import type { ImportProblem } from '../../../store/keeping/read-import.ts';
import { designs } from '../../../store/keeping/use-designs.ts';
import { designOfFragment } from '../../../store/link/design-link.ts';
import { openedLinkWords } from './link-words.ts';

/**
 * Opens the design that the page's address carries, beside the kept ones, and takes it out of the address, so that
 * loading the page again does not bring it twice. Waits until the kept designs are there.
 */
export function useLinkedDesign(isReady: boolean, tell: (problem: ImportProblem) => void): void {
  useEffect(() => {
    if (!isReady) return;
    const look = () => void takeFrom(location.hash, tell);
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, [isReady, tell]);
}

async function takeFrom(hash: string, tell: (problem: ImportProblem) => void): Promise<void> {
  const reading = designOfFragment(hash);
  // Before anything is awaited: a second look must not find it again.
  if (hash.startsWith('#design=')) history.replaceState(null, '', location.pathname + location.search);
  const read = await reading;
  if (read === null) return;
  if (!read.ok) return tell(read.problem);
  const how = await designs.getState().addOrFind(read.value);
  const text = openedLinkWords(read.value.name, how);
  useBench.getState().notify({ tone: 'done', text, canUndo: false });
}
