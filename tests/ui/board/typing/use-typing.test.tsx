import { act, cleanup, renderHook } from '@testing-library/react';
import { afterEach, describe, expect, test, vi } from 'vitest';
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

describe('the keyboard lock', () => {
  test('is found where the browser has it', () => {
    const keyboard = { lock: async () => {}, unlock() {} };
    expect(keyLockOf({ keyboard })).toBe(keyboard);
    expect(keyLockOf({})).toBeNull();
    expect(keyLockOf({ keyboard: { lock: 1, unlock: 2 } })).toBeNull();
  });
});
