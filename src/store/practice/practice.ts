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

/**
 * Takes the practice of the open design up: when the desk is set up, with every other design, and when this tab gets the
 * design back from another one.
 */
export function useOpenPractice(): void {
  const designId = useBench((bench) => bench.designId);
  const readOnly = useBench((bench) => bench.readOnly);
  useEffect(() => {
    if (!readOnly || practice.getState().designId !== designId) void practice.getState().open(designId);
  }, [designId, readOnly]);
}

/** Reads from the practice of the open design. */
export function usePractice<Part>(select: (state: PracticeState) => Part): Part {
  return useStore(practice, select);
}
