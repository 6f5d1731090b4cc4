import type { Keymap } from '../../core/keymap/types.ts';

/** Between a change and its being written, ms. With the write itself it stays well under a second. */
export const SAVE_AFTER_MS = 300;

/** Whether what is on the page is also on the disk. */
export type Saving =
  | { readonly state: 'saved' }
  | { readonly state: 'pending' }
  | { readonly state: 'failed'; readonly why: string };

/** A timer that can be stopped; the page's own, or one that a test moves by hand. */
export interface Timer {
  start(run: () => void, afterMs: number): () => void;
}

/** The page's own timer. */
export const pageTimer: Timer = {
  start: (run, afterMs) => {
    const id = setTimeout(run, afterMs);
    return () => clearTimeout(id);
  },
};

type Write = (id: string, keymap: Keymap) => Promise<void>;

/**
 * Writes changed designs a moment after the change. The first change starts the clock and later ones do not set
 * it back, so no change waits longer than `SAVE_AFTER_MS`. Writes never overlap; of several waiting states of a
 * design only the newest is written; one that failed is tried again with the next change and by `flush`.
 */
export class Saver {
  readonly #write: Write;
  readonly #timer: Timer;
  readonly #tell: (saving: Saving) => void;
  readonly #waiting = new Map<string, Keymap>();
  #stopTimer: (() => void) | null = null;
  #running: Promise<void> = Promise.resolve();

  constructor(write: Write, tell: (saving: Saving) => void, timer: Timer = pageTimer) {
    this.#write = write;
    this.#tell = tell;
    this.#timer = timer;
  }

  /** A design has changed. */
  changed(id: string, keymap: Keymap): void {
    this.#waiting.set(id, keymap);
    this.#tell({ state: 'pending' });
    this.#stopTimer ??= this.#timer.start(() => void this.flush(), SAVE_AFTER_MS);
  }

  /** A design is not to be written any more, because it is gone or belongs to another tab. Gives what was waiting. */
  forget(id: string): Keymap | null {
    const waiting = this.#waiting.get(id) ?? null;
    this.#waiting.delete(id);
    return waiting;
  }

  /** Writes at once what is waiting; settles when all of it is written or has failed. */
  flush(): Promise<void> {
    this.#stopTimer?.();
    this.#stopTimer = null;
    this.#running = this.#running.then(() => this.#writeAll());
    return this.#running;
  }

  async #writeAll(): Promise<void> {
    if (this.#waiting.size === 0) return;
    for (const [id, keymap] of [...this.#waiting]) {
      try {
        await this.#write(id, keymap);
      } catch (error) {
        this.#tell({ state: 'failed', why: error instanceof Error ? error.message : String(error) });
        return;
      }
      if (this.#waiting.get(id) === keymap) this.#waiting.delete(id);
    }
    if (this.#waiting.size === 0) this.#tell({ state: 'saved' });
  }
}
