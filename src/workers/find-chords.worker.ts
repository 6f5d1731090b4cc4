import { expose } from 'comlink';
import type { ChordSuggestions } from '../core/typist/suggest-chords.ts';
import { type ChordSearch, findChords } from './find-chords.ts';

/** What the page can ask of the worker. */
export interface ChordFinding {
  find(search: ChordSearch, tell: (considered: number) => void): Promise<ChordSuggestions>;
}

const finding: ChordFinding = { find: async (search, tell) => findChords(search, tell) };

expose(finding);
