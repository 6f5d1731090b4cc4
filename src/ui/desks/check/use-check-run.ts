import { useCallback, useLayoutEffect, useRef, useState } from 'react';
import { type HeardKey, heardWith } from '../../../core/check/heard.ts';
import { isAskedAgain, isSettled, judge, type StepResult } from '../../../core/check/judge.ts';
import type { CheckStep } from '../../../core/check/steps.ts';
import { useCheck } from '../../../store/check/check.ts';
import { keptResult } from '../../../store/check/kept-check.ts';
import { useTyping } from '../../board/typing/use-typing.ts';

/** A bounce comes within 30 ms of a release: so long is waited for one before a step is over, ms. */
const AFTER_RELEASE_MS = 120;
/** Nothing has come for so long: the step is silent, ms. */
export const SILENT_AFTER_MS = 10_000;
/** Something has come and nothing more for so long: the step is judged as it stands, ms. */
const UNFINISHED_AFTER_MS = 3000;
/** After so many steps in a row of which nothing came, nobody is at the board any more: our own choice. */
export const SILENT_IN_A_ROW = 3;

/** A check that goes on. */
export interface CheckRun {
  readonly active: boolean;
  /** What is asked for now; null when everything has been pressed. */
  readonly step: CheckStep | null;
  /** The result of the press before: of this step, if it is asked for once more, or of the one before. */
  readonly last: { readonly result: StepResult; readonly step: CheckStep; readonly again: boolean } | null;
  readonly locked: boolean;
  /** It stopped by itself, since nothing came any more; what was silent is asked for again. */
  readonly abandoned: boolean;
  begin(): void;
  stop(): void;
  /** Takes the step for silent. */
  nothingCame(): void;
  /** Goes back to the step before. */
  back(): void;
  enterFullScreen(): void;
}

/**
 * Asks for the steps that have no result yet, in order: those that any page sees, and while the keyboard is locked the
 * others too. What went wrong is asked for once more before it counts.
 */
export function useCheckRun(
  seen: readonly CheckStep[],
  whole: readonly CheckStep[],
  results: ReadonlyMap<string, StepResult>,
): CheckRun {
  const note = useCheck((state) => state.note);
  const [active, setActive] = useState(false);
  const [abandoned, setAbandoned] = useState(false);
  const [wanted, want] = useState<readonly string[]>(NONE);
  const [last, setLast] = useState<CheckRun['last']>(null);
  const heard = useRef<readonly HeardKey[]>([]);
  const timer = useRef(0);
  const silences = useRef<readonly string[]>(NONE);
  const known = useRef(results);
  known.current = results;
  const [isLocked, setLocked] = useState(false);
  const walk = isLocked ? whole : seen;
  const step = walk.find(({ id }) => wanted.includes(id)) ?? walk.find(({ id }) => !results.has(id)) ?? null;

  const finish = useCallback(
    (of: CheckStep, events: readonly HeardKey[]) => {
      const result = judge(of, events);
      const secondTry = last?.again === true && last.step.id === of.id;
      const again = isAskedAgain(result, secondTry);
      heard.current = [];
      setLast({ result, step: of, again });
      if (again) return;
      want((ids) => ids.filter((id) => id !== of.id));
      note(keptResult(of, result));
    },
    [last, note],
  );

  /** Nobody pressed anything, or it is over: what is silent for the first time may only be waiting for somebody. */
  const finishByTime = useCallback(
    (of: CheckStep) => {
      const isFresh = heard.current.length === 0 && !known.current.has(of.id);
      silences.current = isFresh ? [...silences.current, of.id] : NONE;
      finish(of, heard.current);
      if (silences.current.length < SILENT_IN_A_ROW) return;
      want(silences.current);
      silences.current = NONE;
      setAbandoned(true);
      setActive(false);
    },
    [finish],
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
  const stop = () => {
    setActive(false);
    heard.current = [];
  };
  const { enterFullScreen, locked } = useTyping({ active: active && step !== null, onKey, onLeave: stop });
  // The next render walks on over what the lock brings.
  if (locked !== isLocked) setLocked(locked);
  return {
    active: active && step !== null,
    step,
    last,
    locked,
    abandoned,
    begin: () => {
      setLast(null);
      setAbandoned(false);
      silences.current = NONE;
      setActive(true);
    },
    stop,
    nothingCame: () => step !== null && finish(step, []),
    back: () => {
      const before = walk[walk.findIndex(({ id }) => id === step?.id) - 1];
      heard.current = [];
      if (before !== undefined) want([before.id]);
    },
    enterFullScreen,
  };
}

const NONE: readonly never[] = [];
