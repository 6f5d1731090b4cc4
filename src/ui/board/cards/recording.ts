import { type Code, isCode } from '../../../core/keymap/codes.ts';

/** What recording has seen: nothing yet, a left Control that may belong to AltGr, or the key. */
export type Recording =
  | { readonly state: 'waiting' }
  | { readonly state: 'control' }
  | { readonly state: 'done'; readonly code: Code }
  /** The browser does not say which key it was, or names one that a keymap cannot hold. */
  | { readonly state: 'unknown'; readonly code: string };

/** No key has been pressed yet. */
export const WAITING: Recording = { state: 'waiting' };

/**
 * Where recording stands after a key event. Windows sends a left Control before AltGr, so a left Control counts only
 * when it comes up again or another key than the right Alt follows.
 */
export function recordedAfter(
  recording: Recording,
  event: { readonly type: 'down' | 'up'; readonly code: string; readonly repeat: boolean },
): Recording {
  if (recording.state === 'done' || event.repeat) return recording;
  if (event.type === 'up') {
    const wasControl = recording.state === 'control' && event.code === 'ControlLeft';
    return wasControl ? { state: 'done', code: 'ControlLeft' } : recording;
  }
  if (recording.state === 'control' && event.code !== 'AltRight')
    return { state: 'done', code: 'ControlLeft' };
  if (event.code === 'ControlLeft') return { state: 'control' };
  return isCode(event.code) ? { state: 'done', code: event.code } : { state: 'unknown', code: event.code };
}
