import { useCallback, useLayoutEffect, useRef, useState } from 'react';
import type { HeardKey } from '../../../core/check/heard.ts';
import { isSettled, judge, type StepResult } from '../../../core/check/judge.ts';
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

/** A check that goes on. */
export interface CheckRun {
  readonly active: boolean;
  /** What is asked for now; null when everything has been pressed. */
  readonly step: CheckStep | null;
  /** The result of the press before: of this step, if it is asked for once more, or of the one before. */
  readonly last: { readonly result: StepResult; readonly step: CheckStep; readonly again: boolean } | null;
  readonly locked: boolean;
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
  const [wanted, want] = useState<string | null>(null);
  const [last, setLast] = useState<CheckRun['last']>(null);
  const heard = useRef<readonly HeardKey[]>([]);
  const timer = useRef(0);
  const isLocked = useRef(false);
  const walk = isLocked.current ? whole : seen;
  const step = walk.find(({ id }) => id === wanted) ?? walk.find(({ id }) => !results.has(id)) ?? null;

  const finish = useCallback(
    (of: CheckStep, events: readonly HeardKey[]) => {
      const result = judge(of, events);
      const secondTry = last?.again === true && last.step.id === of.id;
      const again = result.verdict === 'wrong' && !secondTry;
      heard.current = [];
      setLast({ result, step: of, again });
      if (again) return;
      want(null);
      note(keptResult(of, result));
    },
    [last, note],
  );

  const wait = useCallback(
    (ms: number, of: CheckStep) => {
      window.clearTimeout(timer.current);
      timer.current = window.setTimeout(() => finish(of, heard.current), ms);
    },
    [finish],
  );

  // Before anything can be pressed for what is asked: a later start would cut short what has begun to come.
  useLayoutEffect(() => {
    if (!active || step === null) return;
    wait(SILENT_AFTER_MS, step);
    return () => window.clearTimeout(timer.current);
  }, [active, step, wait]);

  const onKey = (key: HeardKey) => {
    if (step === null) return;
    // A release of something that went down before this step was asked for is none of its business.
    if (key.kind === 'up' && !heard.current.some(({ code }) => code === key.code)) return;
    heard.current = [...heard.current, key];
    wait(isSettled(step, heard.current) ? AFTER_RELEASE_MS : UNFINISHED_AFTER_MS, step);
  };
  const stop = () => {
    setActive(false);
    heard.current = [];
  };
  const { enterFullScreen, locked } = useTyping({ active: active && step !== null, onKey, onLeave: stop });
  isLocked.current = locked;
  return {
    active: active && step !== null,
    step,
    last,
    locked,
    begin: () => {
      setLast(null);
      setActive(true);
    },
    stop,
    nothingCame: () => step !== null && finish(step, []),
    back: () => want(walk[Math.max(0, walk.findIndex(({ id }) => id === step?.id) - 1)]?.id ?? null),
    enterFullScreen,
  };
}
