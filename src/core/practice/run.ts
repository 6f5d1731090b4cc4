import type { KeyEvent } from '../base/key-event.ts';
import type { HostLayout } from '../host/host-layout.ts';
import { type Need, parseNeed } from '../keymap/need.ts';
import type { KeyId, Keymap } from '../keymap/types.ts';
import { type DrillMaterial, nextPrompt } from './drill.ts';
import {
  pastOf,
  type Session,
  wantedNeed,
  withDone,
  withoutRest,
  withPrompt,
  withSlip,
  withTime,
} from './session.ts';
import { type Asked, BoardTrial, EngineTrial, type ReceivedKey, type Trial } from './trial.ts';
import type { Ways } from './ways.ts';

/** More than this between two presses is no practice but a pause, ms. */
const PAUSE_MS = 15_000;

/** What a run types on. */
export interface RunGround {
  readonly keymap: Keymap;
  readonly host: HostLayout;
  readonly ways: Ways;
  /** The keys that typed a need before the design moved it. */
  readonly oldKeysOf: (need: string) => readonly KeyId[];
}

/** A session under the hands, from when it is begun or taken up again until it is paused. Times in ms of the page's clock. */
export class Run {
  readonly #ground: RunGround;
  readonly #trial: EngineTrial | BoardTrial;
  /** When the last need was given, or the prompt was shown. */
  #since: number;
  /** Nothing was given yet: in the middle of a prompt the typist still looks for their place. */
  #isFresh = true;

  constructor(ground: RunGround, input: Session['input'], now: number) {
    const { keymap, host, ways } = ground;
    this.#ground = ground;
    this.#trial = input === 'engine' ? new EngineTrial(keymap, ways) : new BoardTrial(keymap, host);
    this.#since = now;
  }

  /** A key of the board, for a run through the engine. */
  press(event: KeyEvent): void {
    if (this.#trial instanceof EngineTrial) this.#trial.press(event);
  }

  /** A result, for a run with a real board. */
  receive(key: ReceivedKey): void {
    if (this.#trial instanceof BoardTrial) this.#trial.receive(key);
  }

  /** Handles what is due before t. */
  advanceTo(t: number): void {
    if (this.#trial instanceof EngineTrial) this.#trial.advanceTo(t);
  }

  /**
   * The session after what the presses came to. wallAt: a time of the page's clock as ms since 1970. Between prompts it
   * puts the next one on, as long as there is one and the time is not over.
   */
  settle(session: Session, material: () => DrillMaterial, wallAt: (t: number) => number): Session {
    let now = session;
    for (;;) {
      const asked = this.#askedOf(now);
      if (asked === null) return now;
      const trial: Trial = this.#trial;
      const event = trial.take(asked);
      if (event === null) return now;
      if (event.what === 'slip') {
        now = withSlip(now, event.diagnosis);
        continue;
      }
      const took = Math.max(0, event.t - this.#since);
      this.#since = event.t;
      // After a pause the time says nothing about the fingers.
      const isPaused = took > PAUSE_MS || (this.#isFresh && now.position > 0);
      this.#isFresh = false;
      const tookMs = isPaused ? null : took;
      now = withTime(withDone(now, wallAt(event.t), tookMs, asked.way.known), Math.min(took, PAUSE_MS));
      if (wantedNeed(now) === null) now = prompted(now, material());
    }
  }

  #askedOf(session: Session): Asked | null {
    const { ways, oldKeysOf } = this.#ground;
    const text = wantedNeed(session);
    const way = text === null ? null : ways.of(text);
    const need = text === null ? null : readNeed(text);
    if (text === null || way === null || need === null) return null;
    const next = readNeed(session.prompts.at(-1)?.needs[session.position + 1] ?? '');
    return { need, way, next: next ?? undefined, oldKeys: oldKeysOf(text) };
  }
}

/** The session with the next prompt, unless its time is over or there is nothing to ask for. */
function prompted(session: Session, material: DrillMaterial): Session {
  if (session.activeMs >= session.minutes * 60_000) return session;
  const prompt = nextPrompt(material, pastOf(session), session.seed);
  return prompt === null ? session : withPrompt(session, prompt);
}

function readNeed(text: string): Need | null {
  const read = parseNeed(text);
  return read.ok ? read.value : null;
}

/**
 * The session with something to ask for, or with nothing where its time is over or there is nothing: a prompt that has been
 * begun stays, unless the design no longer types all of it.
 */
export function readied(session: Session, ways: Ways, material: () => DrillMaterial): Session {
  const left = session.prompts.at(-1)?.needs.slice(session.position) ?? [];
  const isTypable = left.length > 0 && left.every((need) => ways.of(need) !== null);
  return isTypable ? session : prompted(withoutRest(session), material());
}
