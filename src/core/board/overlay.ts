import type { Board, Hand, KeyId } from '../keymap/types.ts';
import { type Post, postsOf } from './posts.ts';

/** How a keyboard at hand stands in for the board: which of its keys, by W3C code, is which key of the board. */
export interface Overlay {
  readonly id: string;
  readonly title: string;
  /** By W3C code; a code that is not in it stands for no key. */
  readonly keys: Readonly<Record<string, KeyId>>;
}

/** Codes of one hand: for each finger's columns the rows from the top, and the thumb keys outwards from the inner one. */
interface HandCodes {
  /** By column from the inner one outwards: inner index, index, middle, ring, little, outer little. */
  readonly columns: readonly (readonly string[])[];
  /** The row of each column's first code, home row 0. */
  readonly firstRow: number;
  readonly thumbs: readonly string[];
}

interface ReadyOverlay {
  readonly id: string;
  readonly title: string;
  readonly hands: Readonly<Record<Hand, HandCodes>>;
}

const columnsOf = (...rows: readonly string[]): readonly (readonly string[])[] => {
  const table = rows.map((row) => row.split(' '));
  return (table[0] ?? []).map((_, column) => table.map((row) => row[column] ?? ''));
};

/** Rows from the inner index outwards, of a keyboard whose keys lie as ISO/IEC 9995-2 has them. */
const LEFT_DIGITS = 'Digit5 Digit4 Digit3 Digit2 Digit1 Backquote';
const LEFT_UPPER = 'KeyT KeyR KeyE KeyW KeyQ Tab';
const LEFT_MIDDLE = 'KeyG KeyF KeyD KeyS KeyA CapsLock';
const LEFT_LOWER = 'KeyB KeyV KeyC KeyX KeyZ ShiftLeft';
const RIGHT_DIGITS = 'Digit6 Digit7 Digit8 Digit9 Digit0 Minus';
const RIGHT_UPPER = 'KeyY KeyU KeyI KeyO KeyP BracketLeft';
const RIGHT_MIDDLE = 'KeyH KeyJ KeyK KeyL Semicolon Quote';
const RIGHT_LOWER = 'KeyN KeyM Comma Period Slash ShiftRight';

const READY: readonly ReadyOverlay[] = [
  {
    id: 'row-up',
    title: 'One row up: thumbs C V B N M',
    hands: {
      left: {
        columns: columnsOf(LEFT_DIGITS, LEFT_UPPER, LEFT_MIDDLE),
        firstRow: -1,
        thumbs: ['KeyB', 'KeyV', 'KeyC', 'KeyX'],
      },
      right: {
        columns: columnsOf(RIGHT_DIGITS, RIGHT_UPPER, RIGHT_MIDDLE),
        firstRow: -1,
        thumbs: ['KeyN', 'KeyM', 'Comma', 'Period'],
      },
    },
  },
  {
    id: 'row-up-apart',
    title: 'One row up, hands a key apart',
    hands: {
      left: {
        columns: columnsOf(LEFT_DIGITS, LEFT_UPPER, LEFT_MIDDLE),
        firstRow: -1,
        thumbs: ['KeyB', 'KeyV', 'KeyC', 'KeyX'],
      },
      right: {
        columns: columnsOf(
          'Digit7 Digit8 Digit9 Digit0 Minus Equal',
          'KeyU KeyI KeyO KeyP BracketLeft BracketRight',
          'KeyJ KeyK KeyL Semicolon Quote Enter',
        ),
        firstRow: -1,
        thumbs: ['KeyM', 'Comma', 'Period', 'Slash'],
      },
    },
  },
  {
    id: 'same-rows',
    title: 'Row on row, thumbs on Space',
    hands: {
      left: {
        columns: columnsOf(LEFT_DIGITS, LEFT_UPPER, LEFT_MIDDLE, LEFT_LOWER),
        firstRow: -2,
        thumbs: ['Space', 'AltLeft', 'MetaLeft', 'ControlLeft'],
      },
      right: {
        columns: columnsOf(RIGHT_DIGITS, RIGHT_UPPER, RIGHT_MIDDLE, RIGHT_LOWER),
        firstRow: -2,
        thumbs: ['AltRight', 'MetaRight', 'ContextMenu', 'ControlRight'],
      },
    },
  },
];

/** Columns outwards from a finger's home column are counted from here in `HandCodes.columns`. */
const HOME_COLUMN = { index: 1, middle: 2, ring: 3, little: 4 } as const;

/**
 * The overlays that every board comes with, the one that needs no key which a browser or a window system keeps for
 * itself first. Keys for which the keyboard at hand has no place under that finger are left out.
 */
export function readyOverlays(board: Board): readonly Overlay[] {
  return READY.map(({ id, title, hands }) => {
    const keys: Record<string, KeyId> = {};
    for (const post of postsOf(board).values()) {
      const code = codeAt(hands[post.key.hand], post);
      if (code !== undefined && !Object.hasOwn(keys, code)) keys[code] = post.key.id;
    }
    return { id, title, keys };
  });
}

function codeAt(hand: HandCodes, { key, column, row }: Post): string | undefined {
  if (key.finger === 'thumb') return hand.thumbs[column];
  return hand.columns[HOME_COLUMN[key.finger] + column]?.[row - hand.firstRow];
}

/** The board's key that a code stands for, if any. */
export function keyUnder(overlay: Overlay, code: string): KeyId | undefined {
  return Object.hasOwn(overlay.keys, code) ? overlay.keys[code] : undefined;
}
