import type { Direction } from '../../../../core/board/neighbours.ts';
import type { Point } from '../../../../core/board/point.ts';
import type { Finger } from '../../../../core/keymap/types.ts';

/** What a press on the focused key of a board that is being worked on asks for. */
export type ShapeCommand =
  | { readonly command: 'walk'; readonly direction: Direction }
  /** mm. */
  | { readonly command: 'move'; readonly by: Point }
  /** Degrees, clockwise. */
  | { readonly command: 'turn'; readonly degrees: number }
  | { readonly command: 'finger'; readonly finger: Finger }
  | { readonly command: 'select' | 'select-all' | 'home' | 'add' | 'remove' | 'leave' };

/** The parts of a keyboard event that count. */
type Pressed = Pick<KeyboardEvent, 'key' | 'code' | 'ctrlKey' | 'metaKey' | 'altKey' | 'shiftKey'>;

const WAYS: Readonly<
  Record<string, { readonly direction: Direction; readonly x: number; readonly y: number }>
> = {
  ArrowLeft: { direction: 'left', x: -1, y: 0 },
  ArrowRight: { direction: 'right', x: 1, y: 0 },
  ArrowUp: { direction: 'up', x: 0, y: -1 },
  ArrowDown: { direction: 'down', x: 0, y: 1 },
};

/** Fingers are numbered as pianists number them, from the thumb. */
const FINGERS: Readonly<Record<string, Finger>> = {
  Digit1: 'thumb',
  Digit2: 'index',
  Digit3: 'middle',
  Digit4: 'ring',
  Digit5: 'little',
};

/** How far one press goes: 1 mm or degree, a tenth with Alt. */
function stepOf({ altKey }: Pressed): number {
  return altKey ? 0.1 : 1;
}

/**
 * The command of a press; null for presses that belong to the page. Arrows walk, with Shift they move keys by 1 mm, with
 * Alt as well by 0.1 mm; Page Up and Page Down turn by a degree, or by a tenth with Alt.
 */
export function shapeCommandOf(pressed: Pressed): ShapeCommand | null {
  const way = Object.hasOwn(WAYS, pressed.key) ? WAYS[pressed.key] : undefined;
  if (pressed.ctrlKey || pressed.metaKey) {
    return pressed.key.toLowerCase() === 'a' && !pressed.altKey ? { command: 'select-all' } : null;
  }
  if (way !== undefined) return arrow(way, pressed);
  if (pressed.key === 'PageUp') return { command: 'turn', degrees: -stepOf(pressed) };
  if (pressed.key === 'PageDown') return { command: 'turn', degrees: stepOf(pressed) };
  return pressed.altKey ? null : plain(pressed);
}

function arrow(way: { direction: Direction; x: number; y: number }, pressed: Pressed): ShapeCommand | null {
  if (!pressed.shiftKey) return pressed.altKey ? null : { command: 'walk', direction: way.direction };
  const step = stepOf(pressed);
  return { command: 'move', by: { x: way.x * step, y: way.y * step } };
}

function plain(pressed: Pressed): ShapeCommand | null {
  const finger = Object.hasOwn(FINGERS, pressed.code) ? FINGERS[pressed.code] : undefined;
  if (finger !== undefined) return { command: 'finger', finger };
  switch (pressed.key) {
    case ' ':
      return { command: 'select' };
    case 'Enter':
    case 'Insert':
      return { command: 'add' };
    case 'Delete':
    case 'Backspace':
      return { command: 'remove' };
    case 'Escape':
      return { command: 'leave' };
    default:
      return pressed.key.toLowerCase() === 'h' ? { command: 'home' } : null;
  }
}

/** What the handle of a half makes of a press: arrows move it by 1 mm, Page Up and Down turn it, a tenth of each with Alt. */
export function halfCommandOf(
  pressed: Pressed,
): { readonly by: Point } | { readonly degrees: number } | null {
  if (pressed.ctrlKey || pressed.metaKey) return null;
  const step = stepOf(pressed);
  const way = Object.hasOwn(WAYS, pressed.key) ? WAYS[pressed.key] : undefined;
  if (way !== undefined) return { by: { x: way.x * step, y: way.y * step } };
  if (pressed.key === 'PageUp') return { degrees: -step };
  return pressed.key === 'PageDown' ? { degrees: step } : null;
}
