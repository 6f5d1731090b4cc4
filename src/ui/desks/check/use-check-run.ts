import { useCallback, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { type HeardKey, heardWith } from '../../../core/check/heard.ts';
import { isAskedAgain, isSettled, judge, type StepResult } from '../../../core/check/judge.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import { isModifier } from '../../../core/keymap/codes.ts';
import { useTyping } from '../../board/typing/use-typing.ts';

/** A bounce comes within 30 ms of a release: so long is waited for one before a step is over, ms. */
export const AFTER_RELEASE_MS = 120;
/** Nothing has come for so long: the step is silent, ms. */
export const SILENT_AFTER_MS = 10_000;
/** Something has come and nothing more for so long: the step is judged as it stands, ms. */
export const UNFINISHED_AFTER_MS = 3000;
/** After so many steps in a row of which nothing came, nobody is at the board any more: our own choice. */
export const SILENT_IN_A_ROW = 3;

/** Why a check that goes on waits for whoever checks. */
export type Pause =
  | { readonly why: 'stopped' }
  /** Nothing came any more; what was silent is asked for again. */
  | { readonly why: 'nobody' }
  /** Another window has the keyboard: what is pressed goes there. */
  | { readonly why: 'away' }
  /** Modifiers stay down, and would come with everything that follows. */
  | { readonly why: 'stuck'; readonly codes: readonly string[] };

/** What a check goes through. */
export interface CheckWalk {
  /** What any page sees, in the order in which it is asked for. */
  readonly seen: readonly CheckStep[];
  /** What is seen only while the keyboard is locked. */
  readonly lockable: readonly CheckStep[];
  readonly results: ReadonlyMap<string, StepResult>;
  /** Nothing may be taken down here. */
  readonly readOnly: boolean;
  note(step: CheckStep, result: StepResult): void;
}

/** A check that goes on. */
export interface CheckRun {
  /** A step is asked for, and its keys are held back from the page. */
  readonly active: boolean;
  /** Full screen was asked for, and the browser has yet to give its keys up. */
  readonly awaitsLock: boolean;
  /** What is asked for now, or is next; null when nothing is left. */
  readonly step: CheckStep | null;
  /** The result of the press before: of this step, if it is asked for once more, or of the one before. */
  readonly last: { readonly result: StepResult; readonly step: CheckStep; readonly again: boolean } | null;
  readonly locked: boolean;
  /** The browser did not give its keys up. */
  readonly refused: boolean;
  /** Why it waits; null where it was not begun, or is over. */
  readonly pause: Pause | null;
  begin(): void;
  stop(): void;
  /** Takes the step for silent, and goes on. */
  nothingCame(): void;
  /** Goes on with the step before. */
  back(): void;
  /** Asks for steps again that have a result. */
  again(steps: readonly string[]): void;
  /** Asks in full screen for what is seen only there, before all else. */
  pressLockable(): void;
}

/**
 * Asks for the steps that have no result yet, in order: those that any page sees, and while the keyboard is locked the
 * others too. What went wrong is asked for once more before it counts.
 */
export function useCheckRun({ seen, lockable, results, readOnly, note }: CheckWalk): CheckRun {
  const [isBegun, setBegun] = useState(false);
  const [awaitsLock, awaitLock] = useState(false);
  const [pause, setPause] = useState<Pause | null>(null);
  const [wanted, want] = useState<readonly string[]>(NONE);
  const [last, setLast] = useState<CheckRun['last']>(null);
  const heard = useRef<readonly HeardKey[]>([]);
  const timer = useRef(0);
  const silences = useRef<readonly string[]>(NONE);
  const known = useRef(results);
  known.current = results;
  const [isLocked, setLocked] = useState(false);
  const walk = isLocked ? [...seen, ...lockable] : seen;
  const next = walk.find(({ id }) => wanted.includes(id)) ?? walk.find(({ id }) => !results.has(id)) ?? null;
  const step = awaitsLock ? null : next;
  const active = isBegun && step !== null;

  const halt = useCallback((why: Pause | null) => {
    setBegun(false);
    awaitLock(false);
    setPause(why);
    heard.current = [];
    silences.current = NONE;
  }, []);

  const finish = useCallback(
    (of: CheckStep, events: readonly HeardKey[]) => {
      const result = judge(of, events);
      const secondTry = last?.again === true && last.step.id === of.id;
      const again = isAskedAgain(result, secondTry);
      heard.current = [];
      setLast({ result, step: of, again });
      if (again) return;
      want((ids) => ids.filter((id) => id !== of.id));
      note(of, result);
      const codes = result.stuck.filter(isModifier);
      if (codes.length > 0) halt({ why: 'stuck', codes });
    },
    [last, note, halt],
  );

  /** Nobody pressed anything, or it is over: what is silent for the first time may only be waiting for somebody. */
  const finishByTime = useCallback(
    (of: CheckStep) => {
      const isSilent = heard.current.length === 0;
      if (isSilent && !document.hasFocus()) {
        halt({ why: 'away' });
        return;
      }
      const isFresh = isSilent && !known.current.has(of.id);
      silences.current = isFresh ? [...silences.current, of.id] : NONE;
      finish(of, heard.current);
      if (silences.current.length < SILENT_IN_A_ROW) return;
      want(silences.current);
      halt({ why: 'nobody' });
    },
    [finish, halt],
  );

  const wait = useCallback(
    (ms: number, of: CheckStep) => {
      window.clearTimeout(timer.current);
      timer.current = window.setTimeout(() => finishByTime(of), ms);
    },
    [finishByTime],
  );

  // Before anything can be pressed for what is asked: a later start would cut short what has begun to come.
  useLayoutEffect(() => {
    if (!active || step === null) return;
    wait(SILENT_AFTER_MS, step);
    return () => window.clearTimeout(timer.current);
  }, [active, step, wait]);

  const onKey = (key: HeardKey) => {
    if (step === null) return;
    const more = heardWith(heard.current, key);
    if (more === null) return;
    heard.current = more;
    wait(isSettled(step, heard.current) ? AFTER_RELEASE_MS : UNFINISHED_AFTER_MS, step);
  };
  const stop = useCallback(() => halt({ why: 'stopped' }), [halt]);
  const typing = useTyping({ active: active || (isBegun && awaitsLock), onKey, onLeave: stop });
  useHidden(active, stop);
  const { locked, refused } = typing;
  // The next render walks on over what the lock brings.
  if (locked !== isLocked) setLocked(locked);
  if (awaitsLock && locked) awaitLock(false);
  if (isBegun && readOnly) halt({ why: 'stopped' });
  // What is over does not go on by itself when something is left again.
  if (isBegun && (awaitsLock ? refused : next === null && locked === isLocked)) halt(null);

  const begin = () => {
    setLast(null);
    setPause(null);
    silences.current = NONE;
    setBegun(true);
  };
  const again = (steps: readonly string[]) => {
    want(steps);
    begin();
  };
  return {
    active,
    awaitsLock,
    step,
    last,
    locked,
    refused,
    pause,
    begin,
    stop,
    nothingCame: () => {
      if (step === null) return;
      if (!active) begin();
      finish(step, []);
    },
    back: () => {
      const before = walk[walk.findIndex(({ id }) => id === step?.id) - 1];
      heard.current = [];
      if (before !== undefined) want([before.id]);
      if (!active) begin();
    },
    again,
    pressLockable: () => {
      again(lockable.map(({ id }) => id).filter((id) => !results.has(id)));
      if (!locked) awaitLock(true);
      typing.enterFullScreen();
    },
  };
}

/** Calls back when the page goes out of sight: what is pressed then is meant for something else. */
function useHidden(active: boolean, gone: () => void): void {
  useEffect(() => {
    if (!active) return;
    const changed = () => document.visibilityState === 'hidden' && gone();
    document.addEventListener('visibilitychange', changed);
    return () => document.removeEventListener('visibilitychange', changed);
  }, [active, gone]);
}

const NONE: readonly never[] = [];
