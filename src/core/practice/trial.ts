import type { KeyEvent } from '../base/key-event.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { isCode } from '../keymap/codes.ts';
import { isOneCharacter, type Need } from '../keymap/need.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import { diagnosePresses } from './diagnose.ts';
import type { Diagnosis } from './fault.ts';
import { createGivenReader, type Given, judged, wrongPlaces } from './given.ts';
import { diagnoseResults } from './likely.ts';
import type { LiveTyping } from './live-typing.ts';
import { settleFaults } from './settle-faults.ts';
import type { Way, Ways } from './ways.ts';

/** What is asked for, and what it takes to tell why it went wrong. */
export interface Asked {
  readonly need: Need;
  readonly way: Way;
  readonly next: Need | undefined;
  readonly oldKeys: readonly KeyId[];
}

/** Something that came of the presses: the need was given, at a time in ms, or something else was. */
export type TrialEvent =
  | { readonly what: 'done'; readonly t: number }
  | { readonly what: 'slip'; readonly diagnosis: Diagnosis };

/** Presses against what is asked for. `take` is called until it says null; the asked need may change in between. */
export interface Trial {
  take(asked: Asked): TrialEvent | null;
}

/** Keys of the board, through the engine: exact. */
export class EngineTrial implements Trial {
  readonly #keymap: Keymap;
  readonly #live: LiveTyping;
  /** Of the present stretch: so much was wrong when it was last told. */
  #told = 0;

  constructor(keymap: Keymap, ways: Ways) {
    this.#keymap = keymap;
    this.#live = ways.live();
  }

  press(event: KeyEvent): void {
    this.#live.feed(event);
  }

  /** Handles what is due before t, ms. */
  advanceTo(t: number): void {
    this.#live.advanceTo(t);
  }

  take(asked: Asked): TrialEvent | null {
    const stretch = this.#live.stretch();
    const right = stretch.given.findIndex(({ given }) => judged(asked.need, given) === 'right');
    const until = right < 0 ? stretch.given.length : right;
    const given = stretch.given.slice(0, until).map((each) => each.given);
    const wrong = wrongPlaces(asked.need, given);
    const silent = stretch.deeds.filter(({ bound }) => !bound).length;
    const held = settleFaults(this.#keymap, asked.way, stretch).faults.length;
    if (wrong.length + silent + held > this.#told) {
      this.#told = wrong.length + silent + held;
      return { what: 'slip', diagnosis: diagnosePresses({ keymap: this.#keymap, ...asked, stretch }) };
    }
    const done = stretch.given[right];
    if (done === undefined) return null;
    this.#told = 0;
    this.#live.begin(done);
    return { what: 'done', t: done.t };
  }
}

/** A key event as a browser tells it. */
export interface ReceivedKey {
  readonly kind: 'down' | 'up';
  readonly code: string;
  readonly key: string;
  readonly timeMs: number;
}

/** From so long on Escape is a word to the page, ms: our own choice, well over the longest tap of the slowest typists. */
export const LONG_ESCAPE_MS = 500;

/** A real board that sends results: what went wrong is likely, never certain. */
export class BoardTrial implements Trial {
  readonly #keymap: Keymap;
  readonly #host: HostLayout;
  readonly #reader;
  #escape: ReceivedKey | null = null;
  #isDead = false;
  #given: { readonly given: Given; readonly t: number }[] = [];
  #told = 0;

  constructor(keymap: Keymap, host: HostLayout) {
    this.#keymap = keymap;
    this.#host = host;
    this.#reader = createGivenReader(host);
  }

  /**
   * What the computer makes of the key counts before what the design's host layout would. Escape counts when it comes up
   * again, or with the next key: held long and alone it is a word to the page, and nothing that was typed.
   */
  receive(received: ReceivedKey): void {
    if (received.code === 'Escape') this.#receiveEscape(received);
    else {
      if (received.kind === 'down') this.#takeEscape();
      this.#receive(received);
    }
  }

  #receiveEscape(received: ReceivedKey): void {
    if (received.kind === 'down') {
      this.#escape = received;
      return;
    }
    const down = this.#escape;
    if (down !== null && received.timeMs - down.timeMs < LONG_ESCAPE_MS) this.#takeEscape();
    this.#escape = null;
    this.#receive(received);
  }

  /** Takes an Escape that is down for one that was typed. */
  #takeEscape(): void {
    if (this.#escape !== null) this.#receive(this.#escape);
    this.#escape = null;
  }

  #receive({ kind, code, key, timeMs }: ReceivedKey): void {
    if (!isCode(code)) return;
    const given = this.#reader.feed({ type: kind === 'down' ? 'press' : 'release', code });
    if (given === null) return;
    const char = this.#charOf(given, key);
    const waits = key === 'Dead' || (given.waits && char === null);
    this.#given.push({ given: { ...given, char, waits }, t: timeMs });
    this.#isDead = waits;
  }

  /** After a dead key some browsers tell the bare letter: then the composition of the host layout counts. */
  #charOf({ modifiers, char }: Given, key: string): string | null {
    const isComposed = this.#isDead && char !== null;
    const isShortcut = modifiers.some((name) => name !== 'Shift' && (name !== 'Alt' || char === null));
    return !isShortcut && !isComposed && isOneCharacter(key) ? key.normalize('NFC') : char;
  }

  take(asked: Asked): TrialEvent | null {
    const right = this.#given.findIndex(({ given }) => judged(asked.need, given) === 'right');
    const until = right < 0 ? this.#given.length : right;
    const given = this.#given.slice(0, until).map((each) => each.given);
    const wrong = wrongPlaces(asked.need, given).length;
    if (wrong > this.#told) {
      this.#told = wrong;
      const about = { keymap: this.#keymap, host: this.#host, ...asked };
      return { what: 'slip', diagnosis: diagnoseResults({ ...about, given }) };
    }
    const done = this.#given[right];
    if (done === undefined) return null;
    this.#told = 0;
    this.#given = this.#given.slice(right + 1);
    return { what: 'done', t: done.t };
  }
}
