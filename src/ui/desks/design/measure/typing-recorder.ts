import type { RecordedKey } from '../../../../core/typist/fit-observe.ts';
import { STANDARD_SEATS } from '../../../../core/typist/standard-seats.ts';

/** As much of a keyboard event as is recorded. */
export type KeyMoment = Pick<
  KeyboardEvent,
  'code' | 'key' | 'timeStamp' | 'repeat' | 'ctrlKey' | 'metaKey' | 'altKey'
>;

interface Held {
  readonly code: string;
  readonly downMs: number;
  upMs: number | null;
  readonly char: string | null;
}

/** Takes down when keys are pressed and released, by position and in order. */
export class TypingRecorder {
  #keys: Held[] = [];

  down({ code, key, timeStamp, repeat, ctrlKey, metaKey, altKey }: KeyMoment): void {
    if (repeat) return;
    // A shortcut types nothing; it breaks the run of presses as any key does that is not among those of text.
    const isText = !ctrlKey && !metaKey && !altKey;
    const char = isText && [...key].length === 1 ? key : null;
    this.#keys.push({ code: isText ? code : '', downMs: timeStamp, upMs: null, char });
  }

  up({ code, timeStamp }: Pick<KeyMoment, 'code' | 'timeStamp'>): void {
    const held = this.#keys.findLast((key) => key.code === code && key.upMs === null);
    if (held !== undefined) held.upMs = timeStamp;
  }

  /** Presses of keys that text is typed with. */
  get count(): number {
    return this.#keys.filter(({ code }) => STANDARD_SEATS.has(code)).length;
  }

  get keys(): readonly RecordedKey[] {
    return this.#keys;
  }
}
