/** The part of the Keyboard Lock API (a draft of the Web Incubator Community Group) that some browsers have. */
interface KeyLock {
  lock(): Promise<void>;
  unlock(): void;
}

/** The browser's keyboard lock, or null where it has none. */
export function keyLockOf(navigator: object): KeyLock | null {
  const keyboard: unknown = 'keyboard' in navigator ? navigator.keyboard : null;
  return isKeyLock(keyboard) ? keyboard : null;
}

function isKeyLock(value: unknown): value is KeyLock {
  if (typeof value !== 'object' || value === null || !('lock' in value) || !('unlock' in value)) return false;
  return typeof value.lock === 'function' && typeof value.unlock === 'function';
}
