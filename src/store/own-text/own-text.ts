import { proxy, wrap } from 'comlink';
import { useEffect } from 'react';
import { useStore } from 'zustand';
import type { TextCounting } from '../../workers/count-text.worker.ts';
import { indexedDbOrMemory } from '../keeping/key-value.ts';
import { makeOwnText, type OwnTextState, type StartCount } from './make-own-text.ts';

/** Counts in a worker of its own, which is simply ended when the count is broken off. */
const countInWorker: StartCount = (files, tell) => {
  const worker = new Worker(new URL('../../workers/count-text.worker.ts', import.meta.url), {
    type: 'module',
  });
  const failed = new Promise<never>((_, reject) => {
    worker.addEventListener('error', () => reject(new Error('The counting could not be started.')));
  });
  const counted = wrap<TextCounting>(worker).count(files, proxy(tell));
  return { counted: Promise.race([counted, failed]), stop: () => worker.terminate() };
};

const { values } = indexedDbOrMemory({ database: 'handful own text', store: 'counts' });

/** The page's own text. */
export const ownText = makeOwnText(values, countInWorker, () => Date.now());

/** Reads from the own text, which is taken up from where it is kept when this is first used. */
export function useOwnText<Part>(select: (state: OwnTextState) => Part): Part {
  useEffect(() => void ownText.getState().start(), []);
  return useStore(ownText, select);
}
