import { act, cleanup, renderHook } from '@testing-library/react';
import { afterEach, describe, expect, test, vi } from 'vitest';
import { GHOST_WAIT_MS } from '../../../../src/ui/board/typing/ghost-control.ts';
import { keyLockOf } from '../../../../src/ui/board/typing/key-lock.ts';
import {
  ASK_AFTER_MS,
  LEAVE_AFTER_MS,
  listenToKeys,
  type TypedKey,
} from '../../../../src/ui/board/typing/listen-to-keys.ts';
import { useTyping } from '../../../../src/ui/board/typing/use-typing.ts';

function send(type: 'keydown' | 'keyup', code: string, more: KeyboardEventInit = {}): KeyboardEvent {
  const event = new KeyboardEvent(type, {
    code,
    key: code,
    bubbles: true,
    composed: true,
    cancelable: true,
    ...more,
  });
  act(() => void document.body.dispatchEvent(event));
  return event;
}

const words = ({ kind, code, repeat }: TypedKey) =>
  `${code}${kind === 'down' ? '↓' : '↑'}${repeat ? ' again' : ''}`;

function typing(active = true) {
  const heard: string[] = [];
  const hook = renderHook(
    (props: { active: boolean }) =>
      useTyping({
        active: props.active,
        onKey: (typed) => heard.push(words(typed)),
        onAsk: () => heard.push('ask'),
        onLeave: () => heard.push('leave'),
      }),
    { initialProps: { active } },
  );
  return { heard, ...hook };
}

afterEach(() => {
  cleanup();
  vi.useRealTimers();
});

describe('typing', () => {
  test('takes keys and keeps them from the page', () => {
    const { heard } = typing();
    const page = vi.fn();
    document.addEventListener('keydown', page);
    const event = send('keydown', 'Tab');
    send('keydown', 'Tab', { repeat: true });
    send('keyup', 'Tab');
    document.removeEventListener('keydown', page);
    expect(heard).toEqual(['Tab↓', 'Tab↓ again', 'Tab↑']);
    expect(event.defaultPrevented).toBe(true);
    expect(page).not.toHaveBeenCalled();
  });

  test('hands on the time of the event', () => {
    const times: number[] = [];
    renderHook(() => useTyping({ active: true, onKey: ({ timeMs }) => times.push(timeMs), onLeave() {} }));
    const event = send('keydown', 'KeyA');
    expect(times).toEqual([event.timeStamp]);
  });

  test('leaves keys alone while it is not active', () => {
    const { heard, rerender } = typing(false);
    expect(send('keydown', 'KeyA').defaultPrevented).toBe(false);
    rerender({ active: true });
    send('keydown', 'KeyB');
    expect(heard).toEqual(['KeyB↓']);
  });

  test('lets go of what is down when the window loses the keyboard, and when it ends', () => {
    const { heard, rerender } = typing();
    send('keydown', 'KeyA');
    act(() => void window.dispatchEvent(new Event('blur')));
    send('keyup', 'KeyA');
    send('keydown', 'KeyB');
    rerender({ active: false });
    expect(heard).toEqual(['KeyA↓', 'KeyA↑', 'KeyB↓', 'KeyB↑']);
  });

  test('Escape held for a second leaves; a short one is a key like others', () => {
    vi.useFakeTimers();
    const { heard } = typing();
    send('keydown', 'Escape');
    vi.advanceTimersByTime(ASK_AFTER_MS - 1);
    send('keyup', 'Escape');
    vi.advanceTimersByTime(LEAVE_AFTER_MS);
    expect(heard).toEqual(['Escape↓', 'Escape↑']);
    send('keydown', 'Escape');
    act(() => void vi.advanceTimersByTime(LEAVE_AFTER_MS));
    expect(heard.slice(2)).toEqual(['Escape↓', 'ask', 'Escape↑', 'leave']);
  });

  test('Escape held for half a second asks, and does not leave', () => {
    vi.useFakeTimers();
    const { heard } = typing();
    send('keydown', 'Escape');
    vi.advanceTimersByTime(ASK_AFTER_MS);
    send('keyup', 'Escape');
    vi.advanceTimersByTime(LEAVE_AFTER_MS);
    expect(heard).toEqual(['Escape↓', 'ask', 'Escape↑']);
  });

  test('Escape held with another key is typing: it neither asks nor leaves', () => {
    vi.useFakeTimers();
    const { heard } = typing();
    send('keydown', 'Escape');
    vi.advanceTimersByTime(ASK_AFTER_MS - 1);
    send('keydown', 'KeyA');
    vi.advanceTimersByTime(LEAVE_AFTER_MS);
    expect(heard).toEqual(['Escape↓', 'KeyA↓']);
  });

  test('where Command swallows releases, its own release lets go of the others', () => {
    const heard: string[] = [];
    const listener = { onKey: (typed: TypedKey) => heard.push(words(typed)), onLeave() {} };
    const stop = listenToKeys(window, listener, true);
    send('keydown', 'MetaLeft', { key: 'Meta' });
    send('keydown', 'KeyA');
    send('keyup', 'MetaLeft', { key: 'Meta' });
    stop();
    expect(heard).toEqual(['MetaLeft↓', 'KeyA↓', 'MetaLeft↑', 'KeyA↑']);
  });
});

describe('the Control that comes with AltGr', () => {
  /** `C` and `G` for left Control and right Alt, each with its time in ms; `!` for a right Alt that is no AltGr. */
  function heardOf(events: string, atOnce = true): readonly string[] {
    vi.useFakeTimers();
    const { heard, unmount } = typing();
    for (const event of events.split(' ')) {
      const [, name = '', way, time] = /^(.+)([↓⇊↑])(\d+)$/.exec(event) ?? [];
      const code = { C: 'ControlLeft', G: 'AltRight', '!': 'AltRight' }[name] ?? name;
      const key = { C: 'Control', G: 'AltGraph', '!': 'Alt' }[name] ?? name;
      const more = { key, repeat: way === '⇊' };
      sendAt(Number(time), way === '↑' ? 'keyup' : 'keydown', code, more);
      if (!atOnce) vi.advanceTimersByTime(GHOST_WAIT_MS);
    }
    unmount();
    return heard;
  }

  function sendAt(timeStamp: number, type: 'keydown' | 'keyup', code: string, more: KeyboardEventInit) {
    const event = new KeyboardEvent(type, { code, bubbles: true, composed: true, cancelable: true, ...more });
    Object.defineProperty(event, 'timeStamp', { value: timeStamp });
    act(() => void document.body.dispatchEvent(event));
  }

  test.each([
    ['C↓0 G↓0 C↑80 G↑80', 'AltRight↓ AltRight↑'],
    ['C↓0 G↓1 G↑80 C↑80', 'AltRight↓ AltRight↑'],
    // Both repeat while they are held.
    ['C↓0 G↓0 C⇊500 G⇊500 C↑600 G↑600', 'AltRight↓ AltRight↓ again AltRight↑'],
    ['C↓0 G↓0 KeyQ↓40 KeyQ↑90 C↑120 G↑120', 'AltRight↓ KeyQ↓ KeyQ↑ AltRight↑'],
    // Nobody presses two keys within two milliseconds, but twenty.
    ['C↓0 G↓20 C↑80 G↑80', 'ControlLeft↓ AltRight↓ ControlLeft↑ AltRight↑'],
    // A layout without an AltGr has no ghost.
    ['C↓0 !↓0 C↑80 !↑80', 'ControlLeft↓ AltRight↓ ControlLeft↑ AltRight↑'],
    ['C↓0 KeyC↓1 KeyC↑40 C↑50', 'ControlLeft↓ KeyC↓ KeyC↑ ControlLeft↑'],
    ['C↓0 C↑1', 'ControlLeft↓ ControlLeft↑'],
    // The next Control is one again.
    ['C↓0 G↓0 C↑80 G↑80 C↓200 C↑260', 'AltRight↓ AltRight↑ ControlLeft↓ ControlLeft↑'],
  ])('%s', (events, heard) => {
    expect(heardOf(events).join(' ')).toBe(heard);
  });

  test('a Control that nothing follows is told after a moment, with its own time', () => {
    expect(heardOf('C↓0 KeyC↓30', false)).toEqual(['ControlLeft↓', 'KeyC↓', 'ControlLeft↑', 'KeyC↑']);
    const times: number[] = [];
    const heard = { active: true, onKey: ({ timeMs }: TypedKey) => times.push(timeMs), onLeave() {} };
    renderHook(() => useTyping(heard));
    sendAt(7, 'keydown', 'ControlLeft', { key: 'Control' });
    expect(times).toEqual([]);
    vi.advanceTimersByTime(GHOST_WAIT_MS);
    expect(times).toEqual([7]);
  });

  test('a Control that is held back when the window loses the keyboard is told and let go', () => {
    const { heard } = typing();
    sendAt(0, 'keydown', 'ControlLeft', { key: 'Control' });
    act(() => void window.dispatchEvent(new Event('blur')));
    expect(heard).toEqual(['ControlLeft↓', 'ControlLeft↑']);
  });
});

describe('the keyboard lock', () => {
  test('is found where the browser has it', () => {
    const keyboard = { lock: async () => {}, unlock() {} };
    expect(keyLockOf({ keyboard })).toBe(keyboard);
    expect(keyLockOf({})).toBeNull();
    expect(keyLockOf({ keyboard: { lock: 1, unlock: 2 } })).toBeNull();
  });
});
