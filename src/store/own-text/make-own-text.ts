import { createStore, type StoreApi } from 'zustand/vanilla';
import { type CountedFiles, type CountProgress, TEXT_BYTES } from '../../workers/count-files.ts';
import type { KeyValue } from '../keeping/key-value.ts';
import { type GatheredFiles, MOST_FILES } from './gather-files.ts';
import { nameOfFiles, notesOf, type OwnText, readOwnText } from './kept-text.ts';

/** A count that is going on and can be broken off. */
export interface RunningCount {
  readonly counted: Promise<CountedFiles>;
  stop(): void;
}

/** Starts counting files somewhere else than on the page. */
export type StartCount = (files: readonly File[], tell: (progress: CountProgress) => void) => RunningCount;

export type Counting =
  | { readonly state: 'idle' }
  | { readonly state: 'gathering' }
  | {
      readonly state: 'counting';
      readonly done: CountProgress;
      readonly files: number;
      readonly bytes: number;
    }
  | { readonly state: 'failed'; readonly why: string };

export interface OwnTextState {
  readonly text: OwnText | null;
  readonly counting: Counting;
  /** Takes up what is kept, once. */
  start(): Promise<void>;
  /** Counts files in place of the text that there is; until that is done, the old one stays. */
  count(gathering: Promise<GatheredFiles>): Promise<void>;
  cancel(): void;
  forget(): Promise<void>;
}

/** Under which name the text is kept. */
const KEPT_AS = 'own text';

/** The typist's own text: counted, kept with the browser, forgotten when asked to. */
export function makeOwnText(
  values: Pick<KeyValue, 'get' | 'set' | 'del'>,
  startCount: StartCount,
  now: () => number,
): StoreApi<OwnTextState> {
  let started: Promise<void> | undefined;
  /** Which count is the present one: whatever comes from an earlier one is late. */
  let turn = 0;
  let running: RunningCount | null = null;
  return createStore<OwnTextState>((set) => {
    const breakOff = () => {
      turn += 1;
      running?.stop();
      running = null;
    };
    const takeUp = async () => {
      const text = readOwnText(await values.get(KEPT_AS));
      if (turn === 0 && text !== null) set({ text });
    };
    const countTurn = async (mine: number, { files, moreThanLimit }: GatheredFiles) => {
      if (turn !== mine) return null;
      if (files.length === 0) throw new Error('There is no file in that.');
      const all = { files: files.length, bytes: sizeOf(files) };
      const tell = (done: CountProgress) => {
        if (turn === mine) set({ counting: { state: 'counting', done, ...all } });
      };
      tell({ files: 0, bytes: 0 });
      running = startCount(files, tell);
      return textOf(files, await running.counted, moreThanLimit, now());
    };
    return {
      text: null,
      counting: IDLE,
      start: () => {
        started ??= takeUp().catch(() => undefined);
        return started;
      },
      cancel: () => {
        breakOff();
        set({ counting: IDLE });
      },
      forget: async () => {
        breakOff();
        try {
          // Only what is gone for good may look gone: the page can be left at any moment.
          await values.del(KEPT_AS);
          set({ text: null, counting: IDLE });
        } catch (error) {
          set({ counting: failedBy(error) });
        }
      },
      count: async (gathering) => {
        breakOff();
        const mine = turn;
        set({ counting: { state: 'gathering' } });
        try {
          const text = await countTurn(mine, await gathering);
          if (text === null || turn !== mine) return;
          const counting = await values.set(KEPT_AS, text).then(() => IDLE, failedBy);
          set({ text });
          if (turn === mine) set({ counting });
        } catch (error) {
          if (turn === mine) set({ counting: failedBy(error) });
        } finally {
          if (turn === mine) breakOff();
        }
      },
    };
  });
}

const IDLE: Counting = { state: 'idle' };

function failedBy(error: unknown): Counting {
  return { state: 'failed', why: error instanceof Error ? error.message : String(error) };
}

function textOf(
  files: readonly File[],
  counted: CountedFiles,
  moreThanLimit: boolean,
  countedAt: number,
): OwnText {
  const notes = notesOf(counted, { moreThanLimit, mostFiles: MOST_FILES, mostBytes: TEXT_BYTES });
  if (counted.counts.total === 0) throw new Error(['There is no text in that.', ...notes].join(' '));
  const { counts, runs } = counted;
  return { name: nameOfFiles(files), countedAt, files: counted.files, counts, runs, notes };
}

function sizeOf(files: readonly File[]): number {
  return files.reduce((sum, { size }) => sum + size, 0);
}
