import type { KeyEvent } from '../base/key-event.ts';
import type { OutputEvent, TraceEntry } from '../engine/types.ts';
import type { HostLayout } from '../host/host-layout.ts';
import type { Produced } from '../host/typed.ts';
import type { ChordId, KeyId, Keymap } from '../keymap/types.ts';

/** What a press has come to; `nothing`: no layer that is on has a binding for it. */
export type PressResult = 'undecided' | 'tap' | 'hold' | 'chord' | 'nothing';

/** A press of a key from its down to its up, ms; it is filled in while the stream is played. */
export interface Press {
  readonly key: KeyId;
  readonly down: number;
  /** Null while the key is down. */
  up: number | null;
  result: PressResult;
  /** When it was decided what it is; null while it is not. */
  decidedAt: number | null;
  /** The chord that took it. */
  chord: ChordId | null;
}

/** A line of the engine's trace, and which presses it is about, by their place in the run. */
export interface Decision extends TraceEntry {
  readonly presses: readonly number[];
}

/** What the computer receives; cause: the decision that pressed it, by its place in the run, -1 for releases. */
export interface Output extends OutputEvent {
  readonly cause: number;
}

/** A character, key or modifier that came out, when, and by which decision, -1 where none is known. */
export interface Item {
  readonly t: number;
  readonly produced: Produced;
  readonly cause: number;
}

/**
 * A stream of presses played through a design: all that the time line shows. The lists are in order of time and only
 * grow while it is played live.
 */
export interface Run {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly events: readonly KeyEvent[];
  readonly presses: readonly Press[];
  readonly decisions: readonly Decision[];
  readonly outputs: readonly Output[];
  readonly items: readonly Item[];
  /** The time of the last thing that happened, ms. */
  readonly endMs: number;
  /** The longest press and the longest wait for a decision so far, ms: how far back a view must look. */
  readonly longestMs: number;
}
