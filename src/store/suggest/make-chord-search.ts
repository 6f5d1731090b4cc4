import { createStore, type StoreApi } from 'zustand/vanilla';
import { type ChordSuggestions, countSets } from '../../core/typist/suggest-chords.ts';
import type { ChordSearch } from '../../workers/find-chords.ts';

/** A search that is going on and can be broken off. */
export interface RunningSearch {
  readonly found: Promise<ChordSuggestions>;
  stop(): void;
}

/** Starts a search somewhere else than on the page. */
export type StartSearch = (search: ChordSearch, tell: (considered: number) => void) => RunningSearch;

export interface ChordSearchState {
  /** Sets looked at so far, and in all; null while none is going on. */
  readonly running: { readonly considered: number; readonly all: number } | null;
  /** What was found last, and what for; it stays while the next search goes on. */
  readonly found: { readonly of: ChordSearch; readonly result: ChordSuggestions } | null;
  /** Why there is nothing, in a sentence. */
  readonly failed: string | null;
  /** Starts a search in place of any that is going on. */
  run(search: ChordSearch): Promise<void>;
  /** Breaks off; what was found before stays. */
  cancel(): void;
  /** Breaks off and lets go of what was found. */
  clear(): void;
}

/** One search for chords at a time. */
export function makeChordSearch(start: StartSearch): StoreApi<ChordSearchState> {
  /** Which search is the present one: whatever comes from an earlier one is late. */
  let turn = 0;
  let running: RunningSearch | null = null;
  return createStore<ChordSearchState>((set) => {
    const breakOff = () => {
      turn += 1;
      running?.stop();
      running = null;
    };
    return {
      running: null,
      found: null,
      failed: null,
      cancel: () => {
        breakOff();
        set({ running: null });
      },
      clear: () => {
        breakOff();
        set({ running: null, found: null, failed: null });
      },
      run: async (search) => {
        breakOff();
        const mine = turn;
        const all = countSets(search.keymap.board, search.wish);
        set({ running: { considered: 0, all }, failed: null });
        const tell = (considered: number) => {
          if (turn === mine) set({ running: { considered, all } });
        };
        try {
          running = start(search, tell);
          const result = await running.found;
          if (turn !== mine) return;
          breakOff();
          set({ running: null, found: { of: search, result } });
        } catch (error) {
          if (turn !== mine) return;
          breakOff();
          set({ running: null, failed: error instanceof Error ? error.message : String(error) });
        }
      },
    };
  });
}
