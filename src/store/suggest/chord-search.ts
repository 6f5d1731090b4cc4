import { proxy, wrap } from 'comlink';
import type { ChordFinding } from '../../workers/find-chords.worker.ts';
import { makeChordSearch, type StartSearch } from './make-chord-search.ts';

/** Searches in a worker of its own, which is simply ended when the search is broken off or done. */
const searchInWorker: StartSearch = (search, tell) => {
  const worker = new Worker(new URL('../../workers/find-chords.worker.ts', import.meta.url), {
    type: 'module',
  });
  const failed = new Promise<never>((_, reject) => {
    worker.addEventListener('error', () => reject(new Error('The search could not be started.')));
  });
  const found = wrap<ChordFinding>(worker).find(search, proxy(tell));
  return { found: Promise.race([found, failed]), stop: () => worker.terminate() };
};

/** The page's search for chords. */
export const chordSearch = makeChordSearch(searchInWorker);
