import { createStore, type StoreApi } from 'zustand/vanilla';
import { type Fit, fitOf, personOfFit } from '../../core/typist/fit-person.ts';
import { addedTo, type Measured, NOTHING_MEASURED } from '../../core/typist/measured.ts';
import { fitTogether, type MeasuredFile, readMeasured } from '../../core/typist/measured-file.ts';
import type { Person } from '../../core/typist/person.ts';
import type { KeyValue } from '../keeping/key-value.ts';

/** What is known of the typist at this computer, and what was made of it. */
export interface MeasuredTypist {
  readonly file: MeasuredFile;
  readonly fit: Fit;
  /** Null where there is too little for a person. */
  readonly person: Person | null;
}

export interface MeasuredState {
  readonly typist: MeasuredTypist | null;
  /** Takes up what is kept, once. */
  start(): Promise<void>;
  /** Adds to what was measured before, or takes its place. */
  take(more: Measured, clockStepMs: number, how: 'add' | 'replace'): Promise<void>;
  /**
   * Takes up a file that was handed out before, with the time of its measuring; false, and nothing has changed, where
   * both together are more than can be kept.
   */
  open(file: MeasuredFile, how: 'add' | 'replace'): Promise<boolean>;
  /** Deletes all of it. */
  forget(): Promise<void>;
}

const KEPT_AS = 'measured typist';

/** The measured typist: kept with the browser and not with a design, never sent anywhere, deleted when asked to. */
export function makeMeasured(
  values: Pick<KeyValue, 'get' | 'set' | 'del'>,
  handIn: (person: Person | null) => void,
  now: () => number,
): StoreApi<MeasuredState> {
  let started: Promise<void> | undefined;
  let isTouched = false;
  return createStore<MeasuredState>((set, get) => {
    const keep = async (file: MeasuredFile) => {
      isTouched = true;
      show(file);
      await values.set(KEPT_AS, file);
    };
    const show = (file: MeasuredFile | null) => {
      const fit = file === null ? null : fitOf(file);
      const typist = file === null || fit === null ? null : { file, fit, person: personOfFit(fit) };
      set({ typist });
      handIn(typist?.person ?? null);
    };
    return {
      typist: null,
      start: () => {
        started ??= values
          .get(KEPT_AS)
          .then((kept) => {
            const read = readMeasured(kept);
            // What was measured while it was read is newer.
            if (read.ok && !isTouched) show(read.value);
          })
          .catch(() => undefined);
        return started;
      },
      take: async (more, clockStepMs, how) => {
        const before = how === 'add' ? get().typist?.file : undefined;
        const file: MeasuredFile = {
          format: 'measured-typist',
          version: 1,
          measuredAt: now(),
          clockStepMs: Math.max(clockStepMs, before?.clockStepMs ?? 0),
          ...addedTo(before ?? NOTHING_MEASURED, more),
        };
        await keep(file);
      },
      open: async (file, how) => {
        const before = how === 'add' ? get().typist?.file : undefined;
        if (before === undefined) {
          await keep(file);
          return true;
        }
        if (!fitTogether(before, file)) return false;
        await keep({
          ...file,
          ...addedTo(before, file),
          measuredAt: Math.max(before.measuredAt, file.measuredAt),
          clockStepMs: Math.max(before.clockStepMs, file.clockStepMs),
        });
        return true;
      },
      forget: async () => {
        isTouched = true;
        show(null);
        await values.del(KEPT_AS);
      },
    };
  });
}
