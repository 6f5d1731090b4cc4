import { create } from 'zustand';
import { SAMPLE_TEXT } from './source-words.ts';

interface Writing {
  readonly text: string;
  readonly wpm: number;
  readonly spread: number;
  readonly seed: number;
  set(change: Partial<Pick<Writing, 'text' | 'wpm' | 'spread' | 'seed'>>): void;
}

/** What is to be written and by whom; it outlives a look at another desk. */
export const useWriting = create<Writing>()((set) => ({
  text: SAMPLE_TEXT,
  wpm: 60,
  spread: 1,
  seed: 1,
  set: (change) => set(change),
}));
