import type { KeyEvent } from '../base/key-event.ts';
import { compileKeymap } from '../engine/compile.ts';
import { createEngine } from '../engine/engine.ts';
import type { Engine, TraceEntry } from '../engine/types.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { chordById } from '../keymap/lookup.ts';
import type { Keymap } from '../keymap/types.ts';
import type { Deed } from './deed.ts';
import { createGivenReader, type Given } from './given.ts';

/** A deed with the timing rule that settled it, when, ms, and whether anything was bound there. */
export interface TimedDeed extends Deed {
  readonly rule: string;
  readonly t: number;
  readonly bound: boolean;
}

/** Something given, when, and the deed that gave it. t in ms. */
export interface GivenBy {
  readonly given: Given;
  readonly t: number;
  readonly deed: TimedDeed | null;
}

/** All that happened in a stretch of typing: presses as they came, what the engine decided, what the computer was given. */
export interface Stretch {
  readonly presses: readonly KeyEvent[];
  readonly deeds: readonly TimedDeed[];
  readonly given: readonly GivenBy[];
}

/** A design being typed on, event by event, through the engine. */
export class LiveTyping {
  readonly #keymap: Keymap;
  readonly #engine: Engine;
  readonly #reader;
  #presses: KeyEvent[] = [];
  #deeds: TimedDeed[] = [];
  #given: GivenBy[] = [];
  #now = -Infinity;

  constructor(keymap: Keymap, host: HostLayout, compiled = compileKeymap(keymap, host)) {
    this.#keymap = keymap;
    this.#reader = createGivenReader(host);
    this.#engine = createEngine(compiled, {
      output: (t, type, code) => this.#received(t, type, code),
      trace: (entry) => this.#note(entry),
    });
  }

  /**
   * Plays one event. One that comes earlier than what has been played already counts as coming now; the answer is
   * the engine's reason where it refuses the event.
   */
  feed(event: KeyEvent): string | undefined {
    this.#now = Math.max(event.t, this.#now);
    const taken = { ...event, t: this.#now };
    const refused = this.#engine.feed(taken);
    if (refused === undefined) this.#presses.push(taken);
    return refused;
  }

  /** Handles what is due before t, ms. */
  advanceTo(t: number): void {
    if (t <= this.#now) return;
    this.#now = t;
    this.#engine.advanceTo(t);
  }

  /** Lets all that is pending run out. */
  finish(): void {
    this.#engine.finish();
  }

  /** What has happened since the stretch began. */
  stretch(): Stretch {
    return { presses: this.#presses, deeds: this.#deeds, given: this.#given };
  }

  /**
   * Begins a new stretch after something given. It takes over what came later, and the presses of keys that are still
   * down, so that a held layer key stays in sight.
   */
  begin(after: GivenBy): void {
    const down = new Map<string, KeyEvent>();
    for (const event of this.#presses) {
      if (event.type === 'down') down.set(event.key, event);
      else down.delete(event.key);
    }
    const isDown = new Set(down.values());
    this.#presses = this.#presses.filter((event) => isDown.has(event) || event.t > after.t);
    this.#deeds = after.deed === null ? [] : this.#deeds.slice(this.#deeds.lastIndexOf(after.deed) + 1);
    this.#given = this.#given.slice(this.#given.indexOf(after) + 1);
  }

  #received(t: number, type: 'press' | 'release', code: Given['code']): void {
    const given = this.#reader.feed({ type, code });
    if (given !== null) this.#given.push({ given, t, deed: this.#deeds.at(-1) ?? null });
  }

  #note({ what, rule, key, chord, t }: TraceEntry): void {
    if (what !== 'tap' && what !== 'hold' && what !== 'no-binding') return;
    const keys = key !== undefined ? [key] : (chordById(this.#keymap, chord ?? '')?.keys ?? []);
    this.#deeds.push({
      keys,
      chord: chord ?? null,
      side: what === 'hold' ? 'hold' : 'tap',
      layers: this.#engine.layersOn(),
      modifiers: this.#reader.modifiers(),
      rule,
      t,
      bound: what !== 'no-binding',
    });
  }
}
