import type { KeyEvent } from '../../../../src/core/base/key-event.ts';
import type { OutputEvent } from '../../../../src/core/engine/types.ts';
import type { HostLayout } from '../../../../src/core/host/host-layout.ts';
import {
  chordsOf,
  type EffectiveTiming,
  layersOfChord,
  timingOf,
  timingOfChord,
} from '../../../../src/core/keymap/timing.ts';
import type { Action, Chord, Keymap, ShiftedAction } from '../../../../src/core/keymap/types.ts';
import { LiteralActs } from './literal-acts.ts';

/**
 * The timing rules once more, sentence by sentence, with plain arrays and no thought of speed: a second opinion that
 * the engine is held against. It shares nothing with the engine but the types.
 */
interface Firing {
  readonly chord: Chord;
  readonly keys: Set<string>;
}

type Source = string | Firing;

interface Item {
  readonly type: 'down' | 'up';
  readonly of: Source;
  readonly t: number;
}

/** What stage 2 needs to know of a key or a firing. */
interface Bound {
  readonly tap: Action | undefined;
  readonly onShift: ShiftedAction | undefined;
  readonly hold: Action | undefined;
  readonly timing: EffectiveTiming;
}

interface OpenKey {
  readonly of: Source;
  readonly t: number;
  readonly bound: Bound;
  /** None once the timer has passed with nothing inside (S14). */
  due: number | null;
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
  /** By key or chord: see `nameOf`. */
  private readonly lastTapRelease = new Map<string, number>();
  private readonly pressedAsTapOfBoth = new Set<Source>();
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
        this.timer();
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
      const isFirst = firing.keys.size === firing.chord.keys.length;
      firing.keys.delete(key);
      const isIt = firing.chord.release === 'last-up' ? firing.keys.size === 0 : isFirst;
      item = isIt ? { type: 'up', of: firing, t } : null;
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
    const firing: Firing = { chord, keys: new Set(this.downsWaiting()) };
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
      const due = this.open?.due ?? null;
      if (due !== null && due < (item === undefined ? this.now : item.t)) {
        this.timer();
        continue;
      }
      if (item === undefined) return;
      this.work.shift();
      if (this.open !== null) this.takeWhileOpen(item, this.open);
      else if (item.type === 'down') this.takeDown(item);
      else this.takeUp(item);
    }
  }

  /** S8, S14 */
  private timer(): void {
    const pressedInside = this.queue.some((item) => item.type === 'down');
    if (this.open?.bound.timing.tapIfAlone && !pressedInside) {
      this.open.due = null;
      for (const item of this.queue) this.takeUp(item);
      this.queue = [];
    } else this.settle('hold');
  }

  /** S2 */
  private settle(side: 'tap' | 'hold'): void {
    const open = this.open;
    if (open === null) throw new Error('nothing is open');
    this.open = null;
    this.press(open.of, side, open.bound);
    this.work = [...this.queue, ...this.work];
    this.queue = [];
  }

  private takeWhileOpen(item: Item, open: OpenKey): void {
    if (open.due === null && item.type === 'up' && item.of !== open.of) {
      this.takeUp(item); // S14
      return;
    }
    this.queue.push(item);
    const { holdBy, sameHandTaps } = open.bound.timing;
    if (item.type === 'up') {
      if (item.of === open.of) {
        // S3
        this.settle('tap');
        return;
      }
      const downInQueue = this.queue.some((other) => other.type === 'down' && other.of === item.of);
      if (holdBy === 'tap-inside' && downInQueue) this.settle('hold'); // S6
      return;
    }
    if (open.due === null) {
      this.settle('hold'); // S14
      return;
    }
    const { of } = open;
    const areKeys = typeof item.of === 'string' && typeof of === 'string';
    if (sameHandTaps && areKeys && this.sameHandNoThumb(of, item.of)) {
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

  private boundTo(of: Source): Bound | undefined {
    if (typeof of !== 'string') {
      const { chord } = of;
      const timing = timingOfChord(this.keymap, chord);
      return { tap: chord.action, onShift: chord.onShift, hold: chord.hold, timing };
    }
    for (const layer of [...this.keymap.layers].reverse()) {
      const binding = layer.places[of];
      if (binding === undefined || !this.acts.isOn(layer.id)) continue; // S12
      const timing = timingOf(this.keymap, binding);
      return { tap: binding.tap, onShift: binding.onShift, hold: binding.hold, timing };
    }
    return undefined;
  }

  private nameOf(of: Source): string {
    return typeof of === 'string' ? `key ${of}` : `chord ${chordsOf(this.keymap).indexOf(of.chord)}`;
  }

  /** S9 */
  private takeDown(item: Item): void {
    const previous = this.previousDown;
    this.previousDown = item.t;
    const bound = this.boundTo(item.of);
    if (bound === undefined) return;
    const { tap, hold, timing } = bound;
    if (tap !== undefined && hold !== undefined) {
      const released = this.lastTapRelease.get(this.nameOf(item.of));
      const quiet = timing.quietBeforeMs > 0 && previous !== null && item.t < previous + timing.quietBeforeMs; // S10
      const again =
        timing.againWithinMs > 0 && released !== undefined && item.t <= released + timing.againWithinMs; // S11
      if (quiet || again) {
        this.press(item.of, 'tap', bound);
        return;
      }
      this.open = { of: item.of, t: item.t, bound, due: item.t + timing.holdAfterMs }; // S8
      return;
    }
    this.press(item.of, tap === undefined ? 'hold' : 'tap', bound);
  }

  private press(of: Source, side: 'tap' | 'hold', bound: Bound): void {
    const action = bound[side];
    if (action === undefined) throw new Error('no such action');
    if (side === 'tap' && bound.hold !== undefined) this.pressedAsTapOfBoth.add(of);
    else this.pressedAsTapOfBoth.delete(of);
    this.acts.press(of, action, side === 'tap' ? bound.onShift : undefined);
  }

  /** S13 */
  private takeUp(item: Item): void {
    this.acts.release(item.of);
    if (this.pressedAsTapOfBoth.delete(item.of)) this.lastTapRelease.set(this.nameOf(item.of), item.t);
  }
}

/** Plays a valid stream to its end, timers run out. */
export function literalPlay(keymap: Keymap, host: HostLayout, events: readonly KeyEvent[]): OutputEvent[] {
  const engine = new LiteralEngine(keymap, host);
  for (const event of events) engine.event(event);
  engine.runTimersBefore(Number.POSITIVE_INFINITY);
  return engine.output;
}
