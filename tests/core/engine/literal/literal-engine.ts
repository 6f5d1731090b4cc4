import type { KeyEvent } from '../../../../src/core/base/key-event.ts';
import type { OutputEvent } from '../../../../src/core/engine/types.ts';
import type { HostLayout } from '../../../../src/core/host/host-layout.ts';
import { chordsOf, layersOfChord, timingOf } from '../../../../src/core/keymap/timing.ts';
import type { Action, Binding, Chord, Keymap } from '../../../../src/core/keymap/types.ts';
import { LiteralActs } from './literal-acts.ts';

/**
 * The timing rules once more, sentence by sentence, with plain arrays and no thought of speed: a second opinion that
 * the engine is held against. It shares nothing with the engine but the types.
 */
interface Firing {
  readonly chord: Chord;
  readonly keys: Set<string>;
  upSeen: boolean;
}

type Source = string | Firing;

interface Item {
  readonly type: 'down' | 'up';
  readonly of: Source;
  readonly t: number;
}

interface OpenKey {
  readonly key: string;
  readonly t: number;
  readonly binding: Binding & { tap: Action; hold: Action };
  readonly due: number;
}

class LiteralEngine {
  private now = Number.NEGATIVE_INFINITY;
  private readonly acts: LiteralActs;
  // Stage 1
  private waiting: Item[] = [];
  private t0 = 0;
  private possible: Chord[] = [];
  private gatherDue: number | null = null;
  private last: number | null = null;
  private readonly firingOf = new Map<string, Firing>();
  // Stage 2
  private open: OpenKey | null = null;
  private queue: Item[] = [];
  private work: Item[] = [];
  private previousDown: number | null = null;
  private readonly lastTapRelease = new Map<string, number>();
  private readonly pressedAsTapOfBoth = new Set<string>();
  private readonly keymap: Keymap;

  constructor(keymap: Keymap, host: HostLayout) {
    this.keymap = keymap;
    this.acts = new LiteralActs(keymap, host, () => this.now);
  }

  get output(): OutputEvent[] {
    return this.acts.output;
  }

  event(event: KeyEvent): void {
    this.runTimersBefore(event.t);
    this.now = Math.max(this.now, event.t);
    if (event.type === 'down') {
      this.down(event.key, event.t);
      this.last = event.t;
    } else {
      this.up(event.key, event.t);
    }
  }

  /** I4, and the end of the stream with t = Infinity. */
  runTimersBefore(t: number): void {
    for (;;) {
      const due = this.waiting.length > 0 ? this.gatherDue : (this.open?.due ?? null);
      if (due === null || !(due < t)) return;
      this.now = Math.max(this.now, due);
      if (this.waiting.length > 0) this.flush();
      else {
        this.settle('hold');
        this.workOff();
      }
    }
  }

  private live(chord: Chord, key: string, t: number): boolean {
    const quiet = chord.quietBeforeMs ?? 0;
    return (
      chord.keys.includes(key) &&
      layersOfChord(this.keymap, chord).includes(this.acts.highestLayer()) &&
      (quiet === 0 || this.last === null || t >= this.last + quiet)
    );
  }

  private down(key: string, t: number): void {
    if (this.waiting.length === 0) {
      this.possible = chordsOf(this.keymap).filter((chord) => this.live(chord, key, t)); // G1
      if (this.possible.length === 0) {
        this.pass([{ type: 'down', of: key, t }]);
        return;
      }
      this.t0 = t;
    } else {
      const next = this.possible.filter((chord) => chord.keys.includes(key) && t <= this.t0 + chord.windowMs); // G2
      if (next.length === 0) {
        this.flush();
        this.down(key, t);
        return;
      }
      this.possible = next;
    }
    this.waiting.push({ type: 'down', of: key, t });
    const larger = this.larger();
    if (this.whole() !== undefined && larger.length === 0)
      this.flush(); // G3
    else this.gatherDue = this.t0 + Math.max(...larger.map((chord) => chord.windowMs));
  }

  private downsWaiting(): string[] {
    return this.waiting.filter((item) => item.type === 'down').map((item) => item.of as string);
  }

  private whole(): Chord | undefined {
    const downs = this.downsWaiting();
    return this.possible.find(
      (chord) => chord.keys.length === downs.length && downs.every((key) => chord.keys.includes(key)),
    );
  }

  private larger(): Chord[] {
    return this.possible.filter((chord) => chord.keys.length > this.downsWaiting().length);
  }

  private up(key: string, t: number): void {
    if (this.downsWaiting().includes(key)) {
      this.flush(); // G4
      this.up(key, t);
      return;
    }
    const firing = this.firingOf.get(key); // G5
    let item: Item | null = { type: 'up', of: key, t };
    if (firing !== undefined) {
      this.firingOf.delete(key);
      item = firing.upSeen ? null : { type: 'up', of: firing, t };
      firing.upSeen = true;
    }
    if (item === null) return;
    if (this.waiting.length > 0) this.waiting.push(item);
    else this.pass([item]);
  }

  private flush(): void {
    const whole = this.whole();
    const batch = whole === undefined ? this.waiting : this.fire(whole);
    this.waiting = [];
    this.gatherDue = null;
    this.pass(batch);
  }

  private fire(chord: Chord): Item[] {
    const firing: Firing = { chord, keys: new Set(this.downsWaiting()), upSeen: false };
    for (const key of firing.keys) this.firingOf.set(key, firing);
    return [{ type: 'down', of: firing, t: this.t0 }, ...this.waiting.filter((item) => item.type === 'up')]; // G8
  }

  private pass(batch: Item[]): void {
    this.work.push(...batch);
    this.workOff();
  }

  /** S1 */
  private workOff(): void {
    for (;;) {
      const item = this.work[0];
      if (this.open !== null && this.open.due < (item === undefined ? this.now : item.t)) {
        this.settle('hold');
        continue;
      }
      if (item === undefined) return;
      this.work.shift();
      if (this.open !== null) this.takeWhileOpen(item, this.open);
      else if (item.type === 'down') this.takeDown(item);
      else this.takeUp(item);
    }
  }

  /** S2 */
  private settle(side: 'tap' | 'hold'): void {
    const open = this.open;
    if (open === null) throw new Error('nothing is open');
    this.open = null;
    this.press(open.key, side, open.binding);
    this.work = [...this.queue, ...this.work];
    this.queue = [];
  }

  private takeWhileOpen(item: Item, open: OpenKey): void {
    this.queue.push(item);
    const { holdBy, sameHandTaps } = timingOf(this.keymap, open.binding);
    if (item.type === 'up') {
      if (item.of === open.key) {
        // S3
        this.settle('tap');
        return;
      }
      const downInQueue = this.queue.some((other) => other.type === 'down' && other.of === item.of);
      if (holdBy === 'tap-inside' && downInQueue) this.settle('hold'); // S6
      return;
    }
    if (sameHandTaps && typeof item.of === 'string' && this.sameHandNoThumb(open.key, item.of)) {
      this.settle('tap'); // S4
      return;
    }
    if (holdBy === 'press-inside') this.settle('hold'); // S5
  }

  private sameHandNoThumb(one: string, other: string): boolean {
    const a = this.keymap.board.keys.find((key) => key.id === one);
    const b = this.keymap.board.keys.find((key) => key.id === other);
    return a?.hand === b?.hand && a?.finger !== 'thumb' && b?.finger !== 'thumb';
  }

  private bindingOf(of: Source): Binding | undefined {
    if (typeof of !== 'string') return { tap: of.chord.action };
    for (const layer of [...this.keymap.layers].reverse()) {
      const binding = layer.places[of];
      if (binding !== undefined && this.acts.isOn(layer.id)) return binding; // S12
    }
    return undefined;
  }

  /** S9 */
  private takeDown(item: Item): void {
    const previous = this.previousDown;
    this.previousDown = item.t;
    const binding = this.bindingOf(item.of);
    if (binding === undefined) return;
    const { tap, hold } = binding;
    if (typeof item.of === 'string' && tap !== undefined && hold !== undefined) {
      const timing = timingOf(this.keymap, binding);
      const released = this.lastTapRelease.get(item.of);
      const quiet = timing.quietBeforeMs > 0 && previous !== null && item.t < previous + timing.quietBeforeMs; // S10
      const again =
        timing.againWithinMs > 0 && released !== undefined && item.t <= released + timing.againWithinMs; // S11
      if (quiet || again) {
        this.press(item.of, 'tap', binding);
        return;
      }
      this.open = {
        key: item.of,
        t: item.t,
        binding: { ...binding, tap, hold },
        due: item.t + timing.holdAfterMs, // S8
      };
      return;
    }
    this.press(item.of, tap === undefined ? 'hold' : 'tap', binding);
  }

  private press(of: Source, side: 'tap' | 'hold', binding: Binding): void {
    const action = binding[side];
    if (action === undefined) throw new Error('no such action');
    if (typeof of === 'string') {
      if (side === 'tap' && binding.hold !== undefined) this.pressedAsTapOfBoth.add(of);
      else this.pressedAsTapOfBoth.delete(of);
    }
    this.acts.press(of, action);
  }

  /** S13 */
  private takeUp(item: Item): void {
    this.acts.release(item.of);
    if (typeof item.of === 'string' && this.pressedAsTapOfBoth.delete(item.of)) {
      this.lastTapRelease.set(item.of, item.t);
    }
  }
}

/** Plays a valid stream to its end, timers run out. */
export function literalPlay(keymap: Keymap, host: HostLayout, events: readonly KeyEvent[]): OutputEvent[] {
  const engine = new LiteralEngine(keymap, host);
  for (const event of events) engine.event(event);
  engine.runTimersBefore(Number.POSITIVE_INFINITY);
  return engine.output;
}
