import { act, cleanup, renderHook } from '@testing-library/react';
import { useMemo, useState } from 'react';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { StepResult } from '../../../../src/core/check/judge.ts';
import { type CheckStep, checkPlan } from '../../../../src/core/check/steps.ts';
import { usHost } from '../../../../src/core/host/us.ts';
import type { Code, Modifier } from '../../../../src/core/keymap/codes.ts';
import type { Binding } from '../../../../src/core/keymap/types.ts';
import { LEAVE_AFTER_MS } from '../../../../src/ui/board/typing/listen-to-keys.ts';
import {
  AFTER_RELEASE_MS,
  SILENT_AFTER_MS,
  SILENT_IN_A_ROW,
  UNFINISHED_AFTER_MS,
  useCheckRun,
} from '../../../../src/ui/desks/check/use-check-run.ts';
import { layer, small } from '../../../core/keymap/small.ts';

const tap = (code: Code, ...around: Modifier[]): Binding => ({ tap: { do: 'key', code, with: around } });
const design = small([
  layer('base', {
    k1: tap('KeyA'),
    k2: tap('Escape'),
    k3: tap('ShiftLeft'),
    k4: tap('KeyD'),
    k5: tap('KeyW', 'ControlLeft'),
  }),
]);
const { steps } = checkPlan(design, usHost);
const seen = steps.filter(({ sight }) => sight.kind === 'seen');
const lockable = steps.filter(({ sight }) => sight.kind === 'seen-when-locked');
const [A, ESCAPE, SHIFT, D] = seen.map(({ id }) => id);
const [CLOSE] = lockable.map(({ id }) => id);

interface Start {
  readonly readOnly?: boolean;
  /** Steps that have been found right before. */
  readonly right?: readonly CheckStep[];
}

const rightResult = ({ id }: CheckStep): StepResult => ({
  step: id,
  verdict: 'right',
  strokes: [],
  otherCharacters: false,
  bounces: [],
  stuck: [],
});

function running({ readOnly = false, right = [] }: Start = {}) {
  const noted: string[] = [];
  const start = new Map(right.map((step) => [step.id, rightResult(step)]));
  const { result, rerender } = renderHook(
    (props: { readOnly: boolean }) => {
      const [results, setResults] = useState<ReadonlyMap<string, StepResult>>(start);
      const note = useMemo(
        () => (step: CheckStep, made: StepResult) => {
          noted.push(`${step.id} ${made.verdict}`);
          setResults((before) => new Map(before).set(step.id, made));
        },
        [],
      );
      const run = useCheckRun({ seen, lockable, results, readOnly: props.readOnly, note });
      return { run, startOver: () => setResults(new Map()) };
    },
    { initialProps: { readOnly } },
  );
  const run = () => result.current.run;
  return {
    noted,
    run,
    asked: () => (run().active ? run().step?.id : null),
    begin: () => act(() => run().begin()),
    startOver: () => act(() => result.current.startOver()),
    setReadOnly: (value: boolean) => rerender({ readOnly: value }),
  };
}

const pass = (ms: number) => act(() => void vi.advanceTimersByTime(ms));

function send(type: 'keydown' | 'keyup', code: string, key = code): void {
  const event = new KeyboardEvent(type, { code, key, bubbles: true, composed: true, cancelable: true });
  act(() => void document.body.dispatchEvent(event));
}

/** A key is pressed and let go, and what comes of it is judged. */
function press(code: string, key = code, ms = 50): void {
  send('keydown', code, key);
  pass(ms);
  send('keyup', code, key);
  pass(AFTER_RELEASE_MS);
}

const pressA = () => press('KeyA', 'a');

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout', 'performance'] });
});

afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

describe('what is asked for', () => {
  test('what has no result yet, one after the other; then it is over, and does not go on when it is begun anew', () => {
    const { noted, asked, begin, run, startOver } = running();
    expect(asked()).toBeNull();
    begin();
    pressA();
    expect(asked()).toBe(ESCAPE);
    press('Escape');
    press('ShiftLeft', 'Shift');
    press('KeyD', 'd');
    expect(noted).toEqual([A, ESCAPE, SHIFT, D].map((id) => `${id} right`));
    expect(run()).toMatchObject({ active: false, step: null, pause: null });
    startOver();
    expect(run()).toMatchObject({ active: false, step: { id: A } });
  });

  test('what came wrong is asked for once more, and counts the second time', () => {
    const { noted, asked, begin, run } = running();
    begin();
    press('KeyB', 'b');
    expect([asked(), run().last?.again, noted]).toEqual([A, true, []]);
    press('KeyB', 'b');
    expect([asked(), noted]).toEqual([ESCAPE, [`${A} wrong`]]);
  });

  test('right at the second try is right', () => {
    const { noted, begin } = running();
    begin();
    press('KeyB', 'b');
    pressA();
    expect(noted).toEqual([`${A} right`]);
  });

  test('one back, and what went wrong, are asked for again though they have a result', () => {
    const { asked, begin, run, noted } = running();
    begin();
    pressA();
    act(() => run().back());
    expect(asked()).toBe(A);
    pressA();
    act(() => run().stop());
    act(() => run().again([D ?? '']));
    expect(asked()).toBe(D);
    press('KeyD', 'd');
    expect(asked()).toBe(ESCAPE);
    expect(noted).toEqual([`${A} right`, `${A} right`, `${D} right`]);
  });
});

describe('when nothing comes', () => {
  test('a step is silent after its time, and one that was said to be at once', () => {
    const { noted, begin, run } = running();
    begin();
    pass(SILENT_AFTER_MS - 1);
    expect(noted).toEqual([]);
    pass(1);
    act(() => run().nothingCame());
    expect(noted).toEqual([`${A} silent`, `${ESCAPE} silent`]);
  });

  test('after some in a row it waits, and asks for the same again; what is silent then stays so', () => {
    const { noted, asked, begin, run } = running();
    begin();
    for (let at = 0; at < SILENT_IN_A_ROW; at++) pass(SILENT_AFTER_MS);
    expect(run()).toMatchObject({ active: false, pause: { why: 'nobody' }, step: { id: A } });
    begin();
    expect(run().pause).toBeNull();
    pressA();
    pass(SILENT_AFTER_MS);
    pass(SILENT_AFTER_MS);
    expect(asked()).toBe(D);
    expect(noted.slice(SILENT_IN_A_ROW)).toEqual([`${A} right`, `${ESCAPE} silent`, `${SHIFT} silent`]);
  });

  test('while another window has the keyboard says nothing of the board: it waits, and nothing is taken down', () => {
    const { noted, asked, begin, run } = running();
    begin();
    pressA();
    vi.spyOn(document, 'hasFocus').mockReturnValue(false);
    pass(SILENT_AFTER_MS);
    vi.restoreAllMocks();
    expect(run()).toMatchObject({ active: false, pause: { why: 'away' }, step: { id: ESCAPE } });
    expect(noted).toEqual([`${A} right`]);
    begin();
    expect(asked()).toBe(ESCAPE);
  });

  test('silences with a press between them are no sign that nobody is there', () => {
    const { asked, begin } = running();
    begin();
    pass(SILENT_AFTER_MS);
    press('Escape');
    pass(SILENT_AFTER_MS);
    expect(asked()).toBe(D);
  });
});

describe('Escape', () => {
  test('tapped is a key like others, and so is one that is held for less than a second', () => {
    const { noted, asked, begin } = running();
    begin();
    pressA();
    press('Escape', 'Escape', LEAVE_AFTER_MS - 1);
    expect([asked(), noted]).toEqual([SHIFT, [`${A} right`, `${ESCAPE} right`]]);
    press('Escape', 'Escape', LEAVE_AFTER_MS - 1);
    expect(asked()).toBe(SHIFT);
  });

  test('held for a second stops: nothing is taken down, the page has its keys, and it goes on with the same', () => {
    const { noted, asked, begin, run } = running();
    begin();
    send('keydown', 'Escape');
    pass(LEAVE_AFTER_MS);
    expect(run()).toMatchObject({ active: false, pause: { why: 'stopped' }, step: { id: A } });
    const tab = new KeyboardEvent('keydown', { code: 'Tab', bubbles: true, cancelable: true });
    document.body.dispatchEvent(tab);
    expect(tab.defaultPrevented).toBe(false);
    pass(SILENT_AFTER_MS);
    expect(noted).toEqual([]);
    begin();
    expect(asked()).toBe(A);
  });

  test('once stopped, nothing-comes and one-back go on from there', () => {
    const { noted, asked, begin, run } = running();
    begin();
    pressA();
    act(() => run().stop());
    act(() => run().nothingCame());
    expect([asked(), noted.at(-1)]).toEqual([SHIFT, `${ESCAPE} silent`]);
    act(() => run().stop());
    act(() => run().back());
    expect(asked()).toBe(ESCAPE);
  });
});

describe('what would spoil the presses that follow', () => {
  test('a modifier that stays down is taken down, and then the check waits', () => {
    const { noted, begin, run } = running();
    begin();
    pressA();
    press('Escape');
    send('keydown', 'ShiftLeft', 'Shift');
    pass(UNFINISHED_AFTER_MS);
    expect(noted.at(-1)).toBe(`${SHIFT} wrong`);
    expect(run()).toMatchObject({ active: false, pause: { why: 'stuck', codes: ['ShiftLeft'] } });
  });

  test('another key that stays down is taken down, and the next one asked for', () => {
    const { asked, begin, noted } = running();
    begin();
    send('keydown', 'KeyA', 'a');
    pass(UNFINISHED_AFTER_MS);
    expect([asked(), noted]).toEqual([ESCAPE, [`${A} wrong`]]);
  });

  test('the page going out of sight stops it', () => {
    const { begin, run, noted } = running();
    begin();
    vi.spyOn(document, 'visibilityState', 'get').mockReturnValue('hidden');
    act(() => void document.dispatchEvent(new Event('visibilitychange')));
    vi.restoreAllMocks();
    pass(SILENT_AFTER_MS);
    expect([run().pause?.why, noted]).toEqual(['stopped', []]);
  });

  test('while another tab has the design nothing is asked for, and it does not go on by itself afterwards', () => {
    const { begin, asked, setReadOnly } = running();
    begin();
    setReadOnly(true);
    expect(asked()).toBeNull();
    setReadOnly(false);
    expect(asked()).toBeNull();
  });
});

describe('what only a locked keyboard shows', () => {
  let lock = vi.fn(async () => {});

  /** A browser with a keyboard lock, which goes into full screen when it is asked to. */
  function withLock({ fullScreen = true } = {}) {
    lock = vi.fn(async () => {});
    vi.stubGlobal('navigator', { platform: 'Linux', keyboard: { lock, unlock: vi.fn() } });
    let element: Element | null = null;
    Object.defineProperty(document, 'fullscreenElement', { configurable: true, get: () => element });
    const change = (to: Element | null) => {
      element = to;
      document.dispatchEvent(new Event('fullscreenchange'));
    };
    const request = async () => {
      if (!fullScreen) throw new Error('not allowed');
      change(document.documentElement);
    };
    Object.defineProperty(document.documentElement, 'requestFullscreen', {
      configurable: true,
      value: request,
    });
    return { leave: () => act(async () => change(null)) };
  }

  const pressLockable = (run: () => ReturnType<typeof useCheckRun>) =>
    act(async () => {
      run().pressLockable();
      await Promise.resolve();
    });

  const pressClose = () => {
    send('keydown', 'ControlLeft', 'Control');
    send('keydown', 'KeyW', 'w');
    send('keyup', 'KeyW', 'w');
    send('keyup', 'ControlLeft', 'Control');
    pass(AFTER_RELEASE_MS);
  };

  afterEach(() => {
    vi.unstubAllGlobals();
    Object.defineProperty(document, 'fullscreenElement', { configurable: true, value: null });
  });

  test('can be pressed in full screen when all else is done', async () => {
    withLock();
    const { run, asked, noted } = running({ right: seen });
    expect(run().step).toBeNull();
    await pressLockable(run);
    expect(lock).toHaveBeenCalled();
    expect(asked()).toBe(CLOSE);
    pressClose();
    expect(noted).toEqual([`${CLOSE} right`]);
    expect(run()).toMatchObject({ active: false, step: null });
  });

  test('comes before all else where it was asked for, and the rest after it', async () => {
    withLock();
    const { run, asked } = running();
    await pressLockable(run);
    expect(asked()).toBe(CLOSE);
    pressClose();
    expect(asked()).toBe(A);
  });

  test('is not waited for where full screen is refused', async () => {
    withLock({ fullScreen: false });
    const { run } = running({ right: seen });
    await pressLockable(run);
    expect(run()).toMatchObject({ active: false, awaitsLock: false, refused: true });
  });

  test('is not waited for where the browser has no lock', async () => {
    withLock();
    vi.stubGlobal('navigator', { platform: 'Linux' });
    const { run } = running({ right: seen });
    await pressLockable(run);
    expect(run()).toMatchObject({ active: false, awaitsLock: false, refused: true });
  });

  test('is no longer asked for when full screen is left', async () => {
    const { leave } = withLock();
    const { run } = running({ right: seen });
    await pressLockable(run);
    await leave();
    expect(run()).toMatchObject({ active: false, step: null });
  });
});
