import { createStore, type StoreApi } from 'zustand/vanilla';
import type { KeyRenaming } from '../../core/board/key-renaming.ts';
import type { KeyValue } from '../keeping/key-value.ts';
import { type KeptCheck, type KeptResult, NO_CHECK, readCheck, renamedCheck } from './kept-check.ts';

export interface CheckState {
  /** Whose check it is; null before any has been taken up. */
  readonly designId: string | null;
  readonly check: KeptCheck;
  /** Why the last write failed. */
  readonly failed: string | null;
  /** Takes up the check of a design. */
  open(designId: string): Promise<void>;
  /** Takes a result down, in place of an earlier one of the same step. */
  note(result: KeptResult): void;
  /** Ticks a step that is checked by eye, or takes the tick away. */
  tick(step: string, ticked: boolean): void;
  /** Begins anew: everything taken down so far is gone. */
  startOver(): void;
  /** Lets what was taken down of a design go along with its keys, which were given other ids. */
  renameKeys(designId: string, renaming: KeyRenaming): Promise<void>;
  /** Waits until everything is written. */
  written(): Promise<void>;
}

/** The check of the open design. Every result is written at once, so that it can be stopped at any moment. */
export function makeCheck(values: Pick<KeyValue, 'get' | 'set'>, now: () => number): StoreApi<CheckState> {
  let running: Promise<void> = Promise.resolve();
  return createStore<CheckState>((set, get) => {
    const queue = (work: () => Promise<void>) => {
      running = running.then(work).then(
        () => set({ failed: null }),
        (error) => set({ failed: error instanceof Error ? error.message : String(error) }),
      );
      return running;
    };
    const change = (check: KeptCheck) => {
      const { designId } = get();
      if (designId === null) return;
      const begun = check.begunAt === 0 ? { ...check, begunAt: now() } : check;
      set({ check: begun });
      void queue(() => values.set(designId, begun));
    };
    return {
      designId: null,
      check: NO_CHECK,
      failed: null,
      open: async (designId) => {
        if (get().designId === designId) return;
        set({ designId, check: NO_CHECK });
        await queue(async () => {
          const kept = readCheck(await values.get(designId));
          const isNewer = get().designId !== designId || get().check.begunAt !== 0;
          if (kept !== null && !isNewer) set({ check: kept });
        });
      },
      note: (result) => {
        const { check } = get();
        const others = check.results.filter(({ step }) => step !== result.step);
        change({ ...check, results: [...others, result] });
      },
      tick: (step, ticked) => {
        const { check } = get();
        const others = check.byEye.filter((one) => one !== step);
        change({ ...check, byEye: ticked ? [...others, step] : others });
      },
      startOver: () => change({ ...NO_CHECK, begunAt: now() }),
      renameKeys: (designId, renaming) =>
        queue(async () => {
          const kept = readCheck(await values.get(designId));
          if (kept !== null) await values.set(designId, renamedCheck(kept, renaming));
          if (get().designId === designId) set(({ check }) => ({ check: renamedCheck(check, renaming) }));
        }),
      written: () => running,
    };
  });
}
