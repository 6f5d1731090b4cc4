import { createStore, type StoreApi } from 'zustand/vanilla';
import type { KeyRenaming } from '../../core/board/key-renaming.ts';
import type { KeyValue } from '../keeping/key-value.ts';
import {
  type KeptCheck,
  type KeptLook,
  type KeptResult,
  NO_CHECK,
  readCheck,
  renamedCheck,
} from './kept-check.ts';

export interface CheckState {
  /** Whose check it is; null before any has been taken up. */
  readonly designId: string | null;
  readonly check: KeptCheck;
  /** Why the last write failed. */
  readonly failed: string | null;
  /** Takes up the check of a design from where it is kept, also what another tab has taken down since. */
  open(designId: string): Promise<void>;
  /** Takes a result down, in place of an earlier one of the same step. */
  note(result: KeptResult): void;
  /** Takes down what was found by eye, in place of what was found before. */
  look(look: KeptLook): void;
  /** Leaves a step not looked at. */
  unlook(step: string): void;
  /** Begins anew: everything taken down so far is gone. */
  startOver(): void;
  /** Lets what was taken down of a design go along with its keys, which were given other ids. */
  renameKeys(designId: string, renaming: KeyRenaming): Promise<void>;
  /** Deletes the check of a design for good. */
  forget(designId: string): Promise<void>;
  /** Waits until everything is written. */
  written(): Promise<void>;
}

/** The check of the open design. Every result is written at once, so that it can be stopped at any moment. */
export function makeCheck(
  values: Pick<KeyValue, 'get' | 'set' | 'del'>,
  now: () => number,
): StoreApi<CheckState> {
  let running: Promise<void> = Promise.resolve();
  return createStore<CheckState>((set, get) => {
    const queue = (work: () => Promise<void>) => {
      running = running.then(work).then(
        () => set({ failed: null }),
        (error) => set({ failed: error instanceof Error ? error.message : String(error) }),
      );
      return running;
    };
    const change = (part: Partial<KeptCheck>) => {
      const { designId, check: before } = get();
      if (designId === null) return;
      const lastAt = now();
      const merged = { ...before, ...part, lastAt };
      const check = { ...merged, begunAt: merged.begunAt === 0 ? lastAt : merged.begunAt };
      set({ check });
      void queue(() => values.set(designId, check));
    };
    const looksBut = (step: string) => get().check.byEye.filter((one) => one.step !== step);
    return {
      designId: null,
      check: NO_CHECK,
      failed: null,
      open: async (designId) => {
        if (get().designId !== designId) set({ designId, check: NO_CHECK });
        const { check: before } = get();
        await queue(async () => {
          const kept = readCheck(await values.get(designId));
          // What was taken down while it was read is newer.
          const isNewer = get().designId !== designId || get().check !== before;
          if (kept !== null && !isNewer) set({ check: kept });
        });
      },
      note: (result) => {
        const others = get().check.results.filter(({ step }) => step !== result.step);
        change({ results: [...others, result] });
      },
      look: (look) => change({ byEye: [...looksBut(look.step), look] }),
      unlook: (step) => change({ byEye: looksBut(step) }),
      startOver: () => change(NO_CHECK),
      renameKeys: (designId, renaming) =>
        queue(async () => {
          const kept = readCheck(await values.get(designId));
          if (kept !== null) await values.set(designId, renamedCheck(kept, renaming));
          if (get().designId === designId) set(({ check }) => ({ check: renamedCheck(check, renaming) }));
        }),
      forget: async (designId) => {
        if (get().designId === designId) set({ check: NO_CHECK });
        await queue(() => values.del(designId));
      },
      written: () => running,
    };
  });
}
