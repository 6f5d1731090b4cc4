import type { KeyEvent } from '../base/key-event.ts';
import { fingerNumber } from './dwells.ts';
import { ANY_LETTERS, type IntervalKind } from './pair-class.ts';
import type { Press } from './presses.ts';
import type { SampledTypist } from './sample-typist.ts';
import type { Situation } from './situation.ts';
import { onsetSdMs } from './spread.ts';

/** What a press was meant to be, handed on with its down. */
export type Intent = Pick<Press, 'chord' | 'asHold' | 'place'> & { readonly press: number };

/** Takes the events in order of their time. */
export interface Listener {
  event(event: KeyEvent): void;
  /** Called right before the down that it belongs to. */
  intend(key: number, t: number, intent: Intent): void;
}

interface Pending {
  t: number;
  readonly key: number;
}

const JUST_MS = 1;

/** Two hands that press what they are told, with a typist's times. */
export class Hands {
  private readonly situation: Situation;
  private readonly listener: Listener;
  private readonly random: () => number;
  private readonly nesting: number;
  private typist: SampledTypist;
  /** Keys that are still to come up, by time. */
  private ups: Pending[] = [];
  /** When the latest down was, ms. */
  private t: number;
  private latest: { readonly key: number; readonly isTap: boolean } = { key: -1, isTap: false };
  /** When the held keys of this character come up; 0 for none. */
  private heldUntil = 0;
  private lag = 0;

  constructor(situation: Situation, typist: SampledTypist, listener: Listener, random: () => number) {
    this.situation = situation;
    this.typist = typist;
    this.listener = listener;
    this.random = random;
    this.t = 0;
    this.nesting = situation.model.dwells.nestingFactor();
  }

  /** Another typist sits down after a while, all keys up. */
  hand(typist: SampledTypist): void {
    this.rest();
    this.typist = typist;
    this.t += 5000;
  }

  /** All keys come up. */
  rest(): void {
    this.upTo(Number.POSITIVE_INFINITY);
    this.latest = { key: -1, isTap: false };
    this.heldUntil = 0;
    this.lag = 0;
  }

  /** Presses keys after an interval of the kind; `intent` says what for. */
  press(press: Press, kind: IntervalKind, intent: Intent): void {
    const t = this.nextTime(kind);
    if (press.held) this.hold(press, t, intent);
    else if (press.keys.length === 1) this.tap(press.keys[0] ?? 0, t, intent);
    else this.chord(press, t, intent);
  }

  /** After a hold comes what it is for; what comes after that waits until the hold is let go. */
  private nextTime(kind: IntervalKind): number {
    if (this.lag > 0) {
      const t = this.t + this.lag;
      this.lag = 0;
      return t;
    }
    const t = Math.max(this.t + this.typist.interval(kind), this.heldUntil + JUST_MS);
    this.heldUntil = 0;
    return t;
  }

  private hold(press: Press, t: number, intent: Intent): void {
    const { lagMs, downMs } = this.typist.hold();
    this.lag = lagMs;
    this.heldUntil = Math.max(this.heldUntil, t + downMs);
    for (const key of press.keys) this.down(key, t, t + downMs, intent);
    this.latest = { key: -1, isTap: false };
  }

  private tap(key: number, t: number, intent: Intent): void {
    let up = t + this.dwell(key);
    if (this.heldUntil > 0) this.keepHeld(t);
    else up = this.unnested(t, up);
    this.down(key, t, up, intent);
    this.latest = { key, isTap: true };
  }

  /** What is held for this press stays down until after it; whether the letter then comes up first is left to the times. */
  private keepHeld(t: number): void {
    if (this.heldUntil > t) return;
    for (const each of this.ups) if (each.t >= this.heldUntil && each.t <= t) each.t = t + JUST_MS;
    this.heldUntil = t + JUST_MS;
  }

  /**
   * Independent times nest too often: mostly the second key stays down a little longer than the first. The first keeps its
   * dwell, on which it hangs whether it becomes a hold.
   */
  private unnested(t: number, up: number): number {
    const { key, isTap } = this.latest;
    const before = isTap ? this.ups.find((each) => each.key === key) : undefined;
    if (before === undefined || before.t <= up || before.t <= t || this.random() < this.nesting) return up;
    return before.t + JUST_MS;
  }

  private chord({ keys }: Press, t: number, intent: Intent): void {
    const { runs, model } = this.situation;
    const sd = onsetSdMs(
      keys.flatMap((key) => runs.seats[key] ?? []),
      model.person.spreadFactor,
    );
    const onsets = keys
      .map((key) => ({ key, at: this.typist.onset(sd) }))
      .sort((one, other) => one.at - other.at);
    const first = onsets[0]?.at ?? 0;
    for (const { key, at } of onsets) {
      const down = t + at - first;
      this.down(key, down, down + this.dwell(key), intent);
    }
    this.latest = { key: -1, isTap: false };
  }

  /** Two neighbouring keys that nobody meant, the second `gapMs` after the first. */
  slip(keys: readonly [number, number], gapMs: number): void {
    const t = this.nextTime(ANY_LETTERS);
    const intent = { press: -1, chord: -1, asHold: false, place: -1 };
    for (const [at, key] of keys.entries())
      this.down(key, t + at * gapMs, t + at * gapMs + this.dwell(key), intent);
    this.latest = { key: -1, isTap: false };
  }

  private dwell(key: number): number {
    const seat = this.situation.runs.seats[key];
    return this.typist.dwell(seat === undefined ? 0 : fingerNumber(seat));
  }

  private down(key: number, t: number, up: number, intent: Intent): void {
    const own = this.ups.find((each) => each.key === key);
    // A key must come up before it goes down again.
    if (own !== undefined && own.t >= t) own.t = Math.max(this.t, t - Math.min(20, (t - this.t) / 2));
    this.upTo(t);
    this.listener.intend(key, t, intent);
    this.listener.event({ t, key: this.nameOf(key), type: 'down' });
    this.t = t;
    this.ups.push({ t: Math.max(up, t + JUST_MS), key });
  }

  /** Lets keys come up that are due. */
  private upTo(t: number): void {
    if (this.ups.length > 1) this.ups.sort((one, other) => one.t - other.t);
    let done = 0;
    for (const { key, t: due } of this.ups) {
      if (due > t) break;
      this.listener.event({ t: due, key: this.nameOf(key), type: 'up' });
      if (due > this.t) this.t = Math.max(this.t, Number.isFinite(t) ? this.t : due);
      done++;
    }
    if (done > 0) this.ups = this.ups.slice(done);
  }

  private nameOf(key: number): string {
    return this.situation.runs.compiled.keyIds[key] ?? '';
  }
}
