import { useCallback, useEffect, useRef, useState } from 'react';
import { keyUnder, type Overlay } from '../../../core/board/overlay.ts';
import { chordsOf, timingOf } from '../../../core/keymap/timing.ts';
import type { KeyId, Keymap } from '../../../core/keymap/types.ts';
import { Run, readied } from '../../../core/practice/run.ts';
import { isOver, type Session, wantedNeed, withHint } from '../../../core/practice/session.ts';
import { useBench } from '../../../store/bench.ts';
import { practice } from '../../../store/practice/practice.ts';
import type { HintChoice } from '../../../store/practice/practice-choices.ts';
import { useTyping } from '../../board/typing/use-typing.ts';
import type { Room } from './use-room.ts';

/** A session under the hands. */
export interface Running {
  readonly active: boolean;
  /** Keys of the board that are down, as far as they can be seen. */
  readonly pressed: ReadonlySet<KeyId>;
  /** The last key that the overlay has no place for; null after one that it has. */
  readonly strayCode: string | null;
  readonly locked: boolean;
  enterFullScreen(): void;
  begin(): void;
  pause(): void;
  hint(): void;
}

/** After so long without the need being given a hint comes by itself, ms: our own choice. */
const HESITATION_MS = 4000;
/** Between looks at what the engine's timers have come to, ms. */
const TICK_MS = 12;
/** Events reach the page a little after they happened, ms: so far behind the engine is kept. */
const LATE_MS = 12;

const NOTHING: ReadonlySet<KeyId> = new Set();

/** Runs the current session: keys in, the next state of it into the store. */
export function useRun(room: Room, overlay: Overlay): Running {
  const [active, setActive] = useState(false);
  const [pressed, setPressed] = useState(NOTHING);
  const [strayCode, setStrayCode] = useState<string | null>(null);
  const run = useRef<Run | null>(null);
  const latest = useRef(room);
  latest.current = room;
  const settleRef = useRef(() => {});
  const tick = useTicks(() => {
    run.current?.advanceTo(performance.now() - LATE_MS);
    settleRef.current();
  }, longestMs(room.keymap));

  const pause = useCallback(() => {
    setActive(false);
    setPressed(NOTHING);
    setStrayCode(null);
    run.current = null;
  }, []);
  settleRef.current = () => {
    const { current, change, end } = practice.getState();
    if (run.current === null || current === null) return;
    const material = () => latest.current.materialFor(practice.getState().current ?? current);
    const settled = run.current.settle(current, material, wallAt);
    change(settled);
    if (!isOver(settled) && wantedNeed(settled) !== null) return;
    pause();
    end();
  };

  const begin = useCallback(() => {
    const { current, start, change } = practice.getState();
    if (current === null) start();
    const session = practice.getState().current;
    if (session === null) return;
    const { keymap, host, ways, progress, materialFor } = latest.current;
    const oldKeysOf = (need: string) => progress.get(need)?.moved?.from.keys ?? [];
    const ready = readied(session, ways, () => materialFor(session));
    change(ready);
    if (wantedNeed(ready) === null) {
      practice.getState().end();
      return;
    }
    run.current = new Run({ keymap, host, ways, oldKeysOf }, session.input, performance.now());
    setActive(true);
  }, []);

  // A run knows the design that it began on: another one is begun anew.
  const { ways } = room;
  // biome-ignore lint/correctness/useExhaustiveDependencies: the ways are the reason, though not used
  useEffect(() => pause, [ways, pause]);

  // The tab that has the design writes its practice: two would overwrite each other.
  const readOnly = useBench((bench) => bench.readOnly);
  useEffect(() => {
    if (readOnly) pause();
  }, [readOnly, pause]);

  useEffect(() => {
    const hidden = () => {
      if (document.visibilityState === 'hidden') pause();
    };
    document.addEventListener('visibilitychange', hidden);
    return () => document.removeEventListener('visibilitychange', hidden);
  }, [pause]);

  const hint = useCallback(() => {
    const { current, change } = practice.getState();
    if (current !== null) change(withHint(current));
  }, []);
  const typing = useTyping({
    active,
    onAsk: hint,
    onLeave: pause,
    onKey: (typed) => {
      const { current } = practice.getState();
      if (run.current === null || current === null || typed.repeat) return;
      if (current.input === 'board') run.current.receive(typed);
      else {
        const key = keyUnder(overlay, typed.code);
        if (typed.kind === 'down') setStrayCode(key === undefined ? typed.code : null);
        if (key === undefined) return;
        const type = typed.kind;
        run.current.press({ t: typed.timeMs, key, type });
        setPressed((before) => withKey(before, key, type === 'down'));
      }
      settleRef.current();
      tick();
    },
  });
  return { active, pressed, strayCode, begin, pause, hint, ...typing };
}

/** A time of the page's clock as ms since 1970. That clock may stand still while the computer sleeps, so it is led back to the world's now. */
function wallAt(t: number): number {
  return Math.round(Date.now() - (performance.now() - t));
}

function withKey(before: ReadonlySet<KeyId>, key: KeyId, isDown: boolean): ReadonlySet<KeyId> {
  const after = new Set(before);
  if (isDown) after.add(key);
  else after.delete(key);
  return after;
}

/** The longest time that anything of a design waits for, ms. */
function longestMs(keymap: Keymap): number {
  const holds = keymap.layers.flatMap(({ places }) =>
    Object.values(places).map((binding) => timingOf(keymap, binding).holdAfterMs),
  );
  return Math.max(0, ...holds) + Math.max(0, ...chordsOf(keymap).map(({ windowMs }) => windowMs));
}

/** Calls back again and again for a while after it is asked to. */
function useTicks(run: () => void, forMs: number): () => void {
  const until = useRef(0);
  const timer = useRef<number | null>(null);
  const latest = useRef(run);
  latest.current = run;
  useEffect(
    () => () => {
      if (timer.current !== null) window.clearInterval(timer.current);
    },
    [],
  );
  return useCallback(() => {
    until.current = performance.now() + forMs + 4 * LATE_MS;
    timer.current ??= window.setInterval(() => {
      latest.current();
      if (performance.now() < until.current || timer.current === null) return;
      window.clearInterval(timer.current);
      timer.current = null;
    }, TICK_MS);
  }, [forMs]);
}

/** A hint by itself after hesitation, where that is wished. */
export function useHesitation(running: Running, session: Session | null, hints: HintChoice): void {
  const { active, hint } = running;
  const place = session === null ? '' : `${session.prompts.length} ${session.position}`;
  // biome-ignore lint/correctness/useExhaustiveDependencies: every new place begins the wait anew
  useEffect(() => {
    if (!active || hints !== 'after-hesitation') return;
    const timer = window.setTimeout(hint, HESITATION_MS);
    return () => window.clearTimeout(timer);
  }, [active, hints, hint, place]);
}
