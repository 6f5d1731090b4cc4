import { useEffect, useRef, useState } from 'react';
import { keyLockOf } from './key-lock.ts';
import { type KeyListener, listenToKeys } from './listen-to-keys.ts';

interface Typing extends KeyListener {
  /** Whether keys are taken; while not, the page has them as ever. */
  readonly active: boolean;
}

/** The way into full screen, where the browser gives up more keys. */
interface KeysHeldBack {
  enterFullScreen(): void;
  /** Keys of the window system come to the page too: full screen, in a browser that has a keyboard lock. */
  readonly locked: boolean;
  /** Full screen or the lock was asked for, and the browser did not give it. */
  readonly refused: boolean;
}

/** Whether this browser says that a page may come to lock the keyboard. */
export function mayLock(): boolean {
  return keyLockOf(navigator) !== null && document.fullscreenEnabled;
}

/** Takes all keys for the desk while `active`; the handlers of the latest render are called, outside React's own events. */
export function useTyping({ active, ...handlers }: Typing): KeysHeldBack {
  const listener = useRef<KeyListener>(handlers);
  listener.current = handlers;
  useEffect(() => {
    if (!active) return;
    const latest: KeyListener = {
      onKey: (typed) => listener.current.onKey(typed),
      onAsk: () => listener.current.onAsk?.(),
      onLeave: () => listener.current.onLeave(),
    };
    return listenToKeys(window, latest, /^Mac/.test(navigator.platform));
  }, [active]);
  return useKeyLock(active);
}

function useKeyLock(active: boolean): KeysHeldBack {
  const [locked, setLocked] = useState(false);
  const [refused, setRefused] = useState(false);
  useEffect(() => {
    const lock = keyLockOf(navigator);
    if (lock === null || !active) return;
    let isOver = false;
    const changed = async () => {
      if (document.fullscreenElement === null) {
        lock.unlock();
        setLocked(false);
        return;
      }
      const done = await lock.lock().then(
        () => true,
        () => false,
      );
      if (isOver) return;
      setLocked(done);
      setRefused(!done);
    };
    const listen = () => void changed();
    document.addEventListener('fullscreenchange', listen);
    if (document.fullscreenElement !== null) listen();
    return () => {
      isOver = true;
      document.removeEventListener('fullscreenchange', listen);
      lock.unlock();
      setLocked(false);
    };
  }, [active]);
  const enterFullScreen = () => {
    setRefused(keyLockOf(navigator) === null);
    // A browser may refuse full screen; then everything stays as it is.
    const entering = document.documentElement.requestFullscreen?.();
    if (entering === undefined) setRefused(true);
    else void entering.catch(() => setRefused(true));
  };
  return { enterFullScreen, locked, refused };
}
