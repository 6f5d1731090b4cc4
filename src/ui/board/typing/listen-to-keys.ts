import { COMPUTER_STATES, type ComputerState } from '../../../core/check/computer-state.ts';
import { LONG_ESCAPE_MS } from '../../../core/practice/trial.ts';
import { trapGhosts } from './ghost-control.ts';

/** A key that went down or came up on the keyboard at hand. */
export interface TypedKey {
  readonly kind: 'down' | 'up';
  /** W3C `code`; empty where the browser does not say which key it was. */
  readonly code: string;
  /** W3C `key` under the layout of the computer at hand; empty for a key that was let go without an event. */
  readonly key: string;
  /** `event.timeStamp`, ms: when the browser got the event, not when it was handed on. */
  readonly timeMs: number;
  /** The keyboard repeats a key that is held. */
  readonly repeat: boolean;
  /** Modifiers that the computer holds to be down, and Caps Lock. */
  readonly states: readonly ComputerState[];
}

/** What is told of the keys that are pressed. */
export interface KeyListener {
  onKey(typed: TypedKey): void;
  /** Escape alone has been held for half a second, and may yet be held on. */
  onAsk?(): void;
  /** Escape alone was held for a second. Keys that are still down have been told as let go before. */
  onLeave(): void;
}

/** How long Escape is held to ask the page for something, ms. */
export const ASK_AFTER_MS = LONG_ESCAPE_MS;
/** How long Escape is held to leave, ms. */
export const LEAVE_AFTER_MS = 1000;

/**
 * Hears every key before the rest of the page and keeps it from doing anything else. Whatever was told as down is told
 * as up: when the window loses the keyboard, and when listening ends. `losesReleases`: on macOS no key that is held
 * together with Command sends a release of its own. Escape with another key is what somebody types, never a word to the page.
 * The Control that is no press of anybody but part of AltGr is not told.
 */
export function listenToKeys(view: Window, listener: KeyListener, losesReleases: boolean): () => void {
  const down = new Set<string>();
  let waits: readonly number[] = [];
  const stay = () => {
    for (const wait of waits) view.clearTimeout(wait);
    waits = [];
  };
  const told = (event: KeyboardEvent) => {
    const repeat = event.repeat || down.has(event.code);
    down.add(event.code);
    if (!repeat) stay();
    if (!repeat && event.code === 'Escape') {
      waits = [
        view.setTimeout(() => listener.onAsk?.(), ASK_AFTER_MS),
        view.setTimeout(leave, LEAVE_AFTER_MS),
      ];
    }
    listener.onKey({ ...partsOf(event), kind: 'down', repeat });
  };
  const ghosts = trapGhosts(view, told);
  const releaseAll = (timeMs: number) => {
    ghosts.settle();
    stay();
    for (const code of [...down]) {
      down.delete(code);
      listener.onKey({ kind: 'up', code, key: '', timeMs, repeat: false, states: [] });
    }
  };
  const leave = () => {
    releaseAll(view.performance.now());
    listener.onLeave();
  };
  const pressed = (event: KeyboardEvent) => {
    hold(event);
    ghosts.down(event);
  };
  const released = (event: KeyboardEvent) => {
    hold(event);
    if (event.code === 'Escape') stay();
    if (ghosts.up(event) || !down.delete(event.code)) return;
    listener.onKey({ ...partsOf(event), kind: 'up', repeat: false });
    if (losesReleases && event.key === 'Meta') releaseAll(event.timeStamp);
  };
  const gone = (event: Event) => releaseAll(event.timeStamp);
  // Where a shortcut that closes the page cannot be held back, the browser at least asks first.
  const closing = (event: BeforeUnloadEvent) => event.preventDefault();
  view.addEventListener('keydown', pressed, true);
  view.addEventListener('keyup', released, true);
  view.addEventListener('blur', gone);
  view.addEventListener('beforeunload', closing);
  return () => {
    view.removeEventListener('keydown', pressed, true);
    view.removeEventListener('keyup', released, true);
    view.removeEventListener('blur', gone);
    view.removeEventListener('beforeunload', closing);
    releaseAll(view.performance.now());
  };
}

function hold(event: KeyboardEvent): void {
  event.preventDefault();
  event.stopImmediatePropagation();
}

function partsOf(event: KeyboardEvent) {
  return { code: event.code, key: event.key, timeMs: event.timeStamp, states: statesOf(event) };
}

function statesOf(event: KeyboardEvent): readonly ComputerState[] {
  return COMPUTER_STATES.filter((state) => event.getModifierState(state));
}
