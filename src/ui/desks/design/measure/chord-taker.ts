import { observedChord } from '../../../../core/typist/fit-observe.ts';
import type { MeasuredChord } from '../../../../core/typist/measured.ts';

/** What came of an attempt at a chord. */
export type Attempt =
  | { readonly came: 'made'; readonly chord: MeasuredChord; readonly spreadMs: number }
  | { readonly came: 'apart' }
  | { readonly came: 'other-key'; readonly code: string };

/** Keys further apart than this were pressed one after the other, ms: no spread of any hand reaches so far. */
const APART_MS = 300;

/** Watches for one chord after the other: all its keys down at once and no other; between two, all keys come up. */
export class ChordTaker {
  readonly #down = new Map<string, number>();
  #isOver = false;

  /** A key went down while these were asked for; null while the attempt goes on. */
  down(asked: readonly string[], code: string, timeMs: number): Attempt | null {
    if (this.#down.has(code)) return null;
    this.#down.set(code, timeMs);
    if (this.#isOver) return null;
    if (!asked.includes(code)) return this.#end({ came: 'other-key', code });
    if (!asked.every((each) => this.#down.has(each))) return null;
    const chord = observedChord(
      asked.map((each) => ({ code: each, downMs: this.#down.get(each) ?? timeMs })),
    );
    const spreadMs = chord?.onsetsMs.at(-1) ?? 0;
    if (chord === null || spreadMs > APART_MS) return this.#end({ came: 'apart' });
    return this.#end({ came: 'made', chord, spreadMs });
  }

  /** A key came up; one that does so before all are down ends the attempt. */
  up(code: string): Attempt | null {
    this.#down.delete(code);
    const attempt = this.#isOver ? null : this.#end({ came: 'apart' });
    if (this.#down.size === 0) this.#isOver = false;
    return attempt;
  }

  /** The window has lost the keyboard: nothing is down any more as far as anybody knows. */
  forget(): void {
    this.#down.clear();
    this.#isOver = false;
  }

  #end(attempt: Attempt): Attempt {
    this.#isOver = true;
    return attempt;
  }
}
