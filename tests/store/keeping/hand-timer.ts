import type { Timer } from '../../../src/store/keeping/saver.ts';

/** A timer that a test moves by hand. */
export class HandTimer implements Timer {
  #now = 0;
  #waiting: { readonly at: number; readonly run: () => void }[] = [];

  start(run: () => void, afterMs: number): () => void {
    const entry = { at: this.#now + afterMs, run };
    this.#waiting.push(entry);
    return () => {
      this.#waiting = this.#waiting.filter((each) => each !== entry);
    };
  }

  pass(ms: number): void {
    this.#now += ms;
    const due = this.#waiting.filter((entry) => entry.at <= this.#now);
    this.#waiting = this.#waiting.filter((entry) => entry.at > this.#now);
    for (const { run } of due) run();
  }
}
