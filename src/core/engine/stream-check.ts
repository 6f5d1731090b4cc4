import type { KeyEvent } from '../base/key-event.ts';
import type { Compiled } from './compiled.ts';

/** Rule I1: which events can be played after those that were. */
export class StreamCheck {
  private readonly keyNumbers: ReadonlyMap<string, number>;
  private readonly isDown: Uint8Array;
  private latest = -Infinity;

  constructor(compiled: Compiled) {
    this.keyNumbers = compiled.keyNumbers;
    this.isDown = new Uint8Array(compiled.keyIds.length);
  }

  /** The key's number, or -1 where the event is refused; `reason` says why. Changes nothing. */
  keyOf(event: KeyEvent): number {
    const key = this.keyNumbers.get(event.key) ?? -1;
    const { t, type } = event;
    if (key < 0 || !Number.isFinite(t) || t < this.latest) return -1;
    const fits = type === 'down' ? this.isDown[key] === 0 : type === 'up' && this.isDown[key] === 1;
    return fits ? key : -1;
  }

  /** Takes an event of a key number that `keyOf` gave. */
  accept(key: number, event: KeyEvent): void {
    this.isDown[key] = event.type === 'down' ? 1 : 0;
    this.latest = event.t;
  }

  /** From here on no event may be earlier; t in ms. */
  notBefore(t: number): void {
    if (t > this.latest) this.latest = t;
  }

  /** Why `keyOf` refuses an event, as a sentence. */
  reason(event: KeyEvent): string {
    const { t, key, type } = event;
    if (typeof t !== 'number' || !Number.isFinite(t)) return `The time ${String(t)} is not a finite number.`;
    if (t < this.latest) return `The time ${t} lies before ${this.latest}; times must not decrease.`;
    if (!this.keyNumbers.has(key)) return `The board has no key "${String(key)}".`;
    if (type === 'down') return `Key "${key}" goes down at ${t} though it is down already.`;
    if (type === 'up') return `Key "${key}" comes up at ${t} though it is not down.`;
    return `The type "${String(type)}" is neither "down" nor "up".`;
  }
}
