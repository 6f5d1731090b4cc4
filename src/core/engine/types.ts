import type { KeyEvent } from '../base/key-event.ts';
import type { Code, Modifier } from '../keymap/codes.ts';
import type { ChordId, KeyId, LayerId } from '../keymap/types.ts';

/** What the computer receives; t in ms. */
export interface OutputEvent {
  readonly t: number;
  readonly type: 'press' | 'release';
  readonly code: Code;
  /** A Shift that is lifted for a result under Shift, or comes back after it (rule A8): no tap of Shift. */
  readonly lifting?: true;
}

/** One line of the trace: what was decided, when, about what, and why (a rule id of the timing rules). For display only. */
export interface TraceEntry {
  readonly t: number;
  readonly what:
    | 'waiting'
    | 'chord'
    | 'open'
    | 'tap'
    | 'hold'
    | 'layer-on'
    | 'layer-off'
    | 'latch-on'
    | 'latch-off'
    | 'lock-on'
    | 'lock-off'
    | 'alone'
    | 'shifted'
    | 'repeat'
    | 'word-on'
    | 'word-off'
    | 'no-binding'
    | 'no-chord'
    | 'no-route';
  readonly rule: string;
  readonly key?: KeyId;
  readonly chord?: ChordId;
  readonly layer?: LayerId;
  readonly code?: Modifier;
  readonly char?: string;
  /** The reason in words, with its numbers: "held 200 ms, hold after 180". */
  readonly why: string;
  readonly data?: TraceData;
}

/** What the reason's numbers are about, for those who draw it or put it into words of their own. Times in ms. */
export interface TraceData {
  /** The physical down of the key that it is about; of a chord or of waiting keys the first one's. */
  readonly since?: number;
  /** When the timer is due that would decide. */
  readonly until?: number;
  /** The key or chord whose item decided. */
  readonly by?: KeyId | ChordId;
  /** From the first down to the last; since the press before, where that decided. */
  readonly apartMs?: number;
  /** Keys that wait, or that waited in vain, in the order of their downs. */
  readonly keys?: readonly KeyId[];
  /** Chords that the waiting keys may become, or would have. */
  readonly chords?: readonly ChordId[];
}

/** What became of a press: it fired a chord, or was settled; and what a chord's firing was settled to. */
export type Decided = 'chord' | 'tap' | 'hold' | 'no-binding' | 'chord-tap' | 'chord-hold';

/** Where the engine puts what it says. `trace` left out: no trace is made. */
export interface Sink {
  /**
   * For who counts and reads no reasons: the same decisions as in the trace without its words, which cost a third of a long
   * run. A chord and its firing by the chord's place in the document, else a key by its place on the board. Takes the place of a trace.
   */
  decided?(what: Decided, subject: number, t: number): void;
  output(t: number, type: 'press' | 'release', code: Code, lifting?: true): void;
  trace?(entry: TraceEntry): void;
}

/** A stream that cannot be played, and where. */
export interface RefusedStream {
  readonly index: number;
  readonly reason: string;
}

/** The incremental form. Times handed in never decrease. */
export interface Engine {
  /** Handles one event, and before it all timers due before it (rule I4). A bad event is refused and changes nothing. */
  feed(event: KeyEvent): string | undefined;
  /** Handles every timer that is due before t (a timer at T is handled by any t > T). */
  advanceTo(t: number): void;
  /** Lets all pending timers run out in order of their time. */
  finish(): void;
  /** Layers that are on now, lowest first. */
  layersOn(): readonly LayerId[];
}
