import type { Code } from '../keymap/codes.ts';

/**
 * The keys that may give a character, in the order in which routes of equal cost are offered: first the 48 that
 * every board for typing has, row by row from the home row outwards; then keys that only some boards have; last
 * the number pad. Media and bracket keys that some systems read as characters are left out: most do not.
 */
export const COMMON_TYPING_CODES: readonly Code[] = [
  ...(['KeyA', 'KeyS', 'KeyD', 'KeyF', 'KeyG', 'KeyH', 'KeyJ', 'KeyK', 'KeyL'] as const),
  ...(['Semicolon', 'Quote'] as const),
  ...(['KeyQ', 'KeyW', 'KeyE', 'KeyR', 'KeyT', 'KeyY', 'KeyU', 'KeyI', 'KeyO', 'KeyP'] as const),
  ...(['BracketLeft', 'BracketRight', 'Backslash'] as const),
  ...(['KeyZ', 'KeyX', 'KeyC', 'KeyV', 'KeyB', 'KeyN', 'KeyM', 'Comma', 'Period', 'Slash'] as const),
  ...(['Backquote', 'Digit1', 'Digit2', 'Digit3', 'Digit4', 'Digit5', 'Digit6'] as const),
  ...(['Digit7', 'Digit8', 'Digit9', 'Digit0', 'Minus', 'Equal', 'Space'] as const),
];

/** All keys that a host table may list, the common ones first. */
export const TYPING_CODES: readonly Code[] = [
  ...COMMON_TYPING_CODES,
  ...(['IntlBackslash', 'IntlRo', 'IntlYen'] as const),
  ...(['NumpadDivide', 'NumpadMultiply', 'NumpadSubtract', 'NumpadAdd'] as const),
  ...(['NumpadDecimal', 'NumpadComma', 'NumpadEqual'] as const),
];
