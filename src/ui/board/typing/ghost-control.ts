/** The parts of a key event that tell a ghost. */
type KeyParts = Pick<KeyboardEvent, 'code' | 'key' | 'timeStamp' | 'getModifierState'>;

/** So far may a ghost lie before its AltGr, ms: both come of one press, and browsers round their clocks to a ms. */
const TOGETHER_MS = 2;
/** A Control that nothing follows for so long was pressed by somebody, ms: our own choice. */
export const GHOST_WAIT_MS = 10;

/**
 * On Windows, where the host layout has an AltGr, its press comes as a left Control and then the right Alt (common
 * practice, no source). The right Alt is an AltGr where its `key` is `AltGraph` (W3C, UI Events KeyboardEvent key
 * Values) or that modifier is on (`getModifierState`, W3C, UI Events). A Control that a keyboard really sends in the
 * same moment as its AltGr cannot be told from a ghost.
 */
export function isGhostOf(control: KeyParts, next: KeyParts): boolean {
  if (control.code !== 'ControlLeft' || next.code !== 'AltRight') return false;
  const isAltGr = next.key === 'AltGraph' || next.getModifierState('AltGraph');
  return isAltGr && Math.abs(next.timeStamp - control.timeStamp) <= TOGETHER_MS;
}

/** What becomes of events that may be ghosts; each is told once, in order, or never. */
export interface GhostTrap {
  /** A key went down; what is told of it may be told a little later. */
  down(event: KeyboardEvent): void;
  /** A key came up; true where it belongs to a ghost and is to be forgotten. */
  up(event: KeyboardEvent): boolean;
  /** Tells what is held back. */
  settle(): void;
}

/** Holds a left Control back until it is known whether AltGr follows; `tell` takes every down that is no ghost. */
export function trapGhosts(view: Window, tell: (event: KeyboardEvent) => void): GhostTrap {
  let held: KeyboardEvent | null = null;
  let timer = 0;
  /** While AltGr is down its ghost repeats along with it. */
  let haunted = false;
  const settle = (next: KeyboardEvent | null) => {
    view.clearTimeout(timer);
    const control = held;
    held = null;
    if (control === null) return;
    if (next !== null && isGhostOf(control, next)) haunted = true;
    else tell(control);
  };
  return {
    settle: () => {
      settle(null);
      haunted = false;
    },
    down: (event) => {
      settle(event);
      const isControl = event.code === 'ControlLeft';
      if (isControl && haunted) return;
      if (!isControl || event.repeat) return tell(event);
      held = event;
      timer = view.setTimeout(() => settle(null), GHOST_WAIT_MS);
    },
    up: (event) => {
      settle(null);
      const isGhost = haunted && event.code === 'ControlLeft';
      if (event.code === 'AltRight' || isGhost) haunted = false;
      return isGhost;
    },
  };
}
