import type { Direction } from '../../core/board/neighbours.ts';
import { isOneCharacter } from '../../core/keymap/need.ts';

/** What a press on a focused key of the board asks for. */
export type KeyCommand =
  | { readonly command: 'walk'; readonly direction: Direction }
  | { readonly command: 'open' }
  /** Puts down what is carried. */
  | { readonly command: 'put'; readonly side: 'tap' | 'hold' }
  | { readonly command: 'select' }
  | { readonly command: 'bind'; readonly char: string }
  | { readonly command: 'unbind' }
  | { readonly command: 'leave' };

/** The parts of a keyboard event that count. */
export interface PressedKey {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly altKey: boolean;
  readonly shiftKey: boolean;
  /** AltGr types characters; some systems report it as Control and Alt. */
  readonly altGraph: boolean;
  readonly isComposing: boolean;
}

const WALKS: Readonly<Record<string, Direction>> = {
  ArrowLeft: 'left',
  ArrowRight: 'right',
  ArrowUp: 'up',
  ArrowDown: 'down',
};

/** The command of a press; null for presses that belong to the page or the browser, such as Control and Z. */
export function commandOf(pressed: PressedKey, carrying: boolean): KeyCommand | null {
  if (pressed.isComposing) return null;
  if ((pressed.ctrlKey || pressed.metaKey || pressed.altKey) && !pressed.altGraph) return null;
  const direction = Object.hasOwn(WALKS, pressed.key) ? WALKS[pressed.key] : undefined;
  if (direction !== undefined) return { command: 'walk', direction };
  return carrying && (pressed.key === 'Enter' || pressed.key === ' ')
    ? { command: 'put', side: pressed.shiftKey ? 'hold' : 'tap' }
    : plainCommand(pressed.key);
}

function plainCommand(key: string): KeyCommand | null {
  switch (key) {
    case 'Enter':
      return { command: 'open' };
    case ' ':
      return { command: 'select' };
    case 'Delete':
    case 'Backspace':
      return { command: 'unbind' };
    case 'Escape':
      return { command: 'leave' };
    default:
      // Names of keys ("Tab", "Dead", "F5") have more than one character.
      return isOneCharacter(key) ? { command: 'bind', char: key.normalize('NFC') } : null;
  }
}
