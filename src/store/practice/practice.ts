import { useEffect } from 'react';
import { useStore } from 'zustand';
import { useBench } from '../bench.ts';
import { indexedDbOrMemory } from '../keeping/key-value.ts';
import { makePractice, type PracticeState } from './make-practice.ts';
import { PracticeShelf } from './practice-shelf.ts';

const { values } = indexedDbOrMemory({ database: 'handful practice', store: 'sessions' });

/** The page's practice. */
export const practice = makePractice(new PracticeShelf(values), {
  now: () => Date.now(),
  random: () => Math.random(),
  newId: () => crypto.randomUUID(),
});

/** Reads from the practice of the open design, which is taken up from where it is kept. */
export function usePractice<Part>(select: (state: PracticeState) => Part): Part {
  const designId = useBench((bench) => bench.designId);
  useEffect(() => void practice.getState().open(designId), [designId]);
  return useStore(practice, select);
}
