import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { keyUnder, readyOverlays } from '../../../src/core/board/overlay.ts';
import { boardRows } from '../../../src/core/board/rows.ts';
import { isCode } from '../../../src/core/keymap/codes.ts';
import { FAMILY, readyBoard, scatteredBoards } from './boards.ts';

function overlayOf(boardId: string, overlayId: string) {
  const overlay = readyOverlays(readyBoard(boardId)).find(({ id }) => id === overlayId);
  if (overlay === undefined) throw new Error(`no overlay ${overlayId}`);
  return overlay;
}

/** The codes that lie on the keys of a board, row by row. */
function laid(boardId: string, overlayId: string): readonly string[] {
  const codes = new Map(Object.entries(overlayOf(boardId, overlayId).keys).map(([code, key]) => [key, code]));
  return boardRows(readyBoard(boardId)).map((row) => row.map((key) => codes.get(key) ?? '–').join(' '));
}

describe('ready overlays', () => {
  test('one row up: digits on top, thumbs on C V B N M', () => {
    expect(laid('split-36', 'row-up')).toEqual([
      'Digit1 Digit2 Digit3 Digit4 Digit5 Digit6 Digit7 Digit8 Digit9 Digit0',
      'KeyQ KeyW KeyE KeyR KeyT KeyY KeyU KeyI KeyO KeyP',
      'KeyA KeyS KeyD KeyF KeyG KeyH KeyJ KeyK KeyL Semicolon',
      'KeyC KeyV KeyB KeyN KeyM Comma',
    ]);
    expect(laid('split-34', 'row-up')[3]).toBe('KeyV KeyB KeyN KeyM');
  });

  test('row on row: an outer column falls on Tab, Caps Lock and Shift', () => {
    expect(laid('split-42', 'same-rows')).toEqual([
      'Tab KeyQ KeyW KeyE KeyR KeyT KeyY KeyU KeyI KeyO KeyP BracketLeft',
      'CapsLock KeyA KeyS KeyD KeyF KeyG KeyH KeyJ KeyK KeyL Semicolon Quote',
      'ShiftLeft KeyZ KeyX KeyC KeyV KeyB KeyN KeyM Comma Period Slash ShiftRight',
      'MetaLeft AltLeft Space AltRight MetaRight ContextMenu',
    ]);
  });

  test('hands apart: the right hand lies one key further right', () => {
    expect(laid('split-34', 'row-up-apart')).toEqual([
      'Digit1 Digit2 Digit3 Digit4 Digit5 Digit7 Digit8 Digit9 Digit0 Minus',
      'KeyQ KeyW KeyE KeyR KeyT KeyU KeyI KeyO KeyP BracketLeft',
      'KeyA KeyS KeyD KeyF KeyG KeyJ KeyK KeyL Semicolon Quote',
      'KeyV KeyB KeyM Comma',
    ]);
  });

  test.each(FAMILY)('$title: every key has a code in every overlay', ({ board }) => {
    for (const { keys } of readyOverlays(board))
      expect(new Set(Object.values(keys))).toEqual(new Set(board.keys.map(({ id }) => id)));
  });

  test.prop([scatteredBoards])('name codes of the standard, and keys of the board once', (board) => {
    const ids = new Set(board.keys.map(({ id }) => id));
    for (const { keys } of readyOverlays(board)) {
      expect(Object.keys(keys).filter((code) => !isCode(code))).toEqual([]);
      expect(Object.values(keys).filter((key) => !ids.has(key))).toEqual([]);
      expect(new Set(Object.values(keys)).size).toBe(Object.keys(keys).length);
    }
  });

  test('a code that is not laid on the board, or is no code, stands for no key', () => {
    const overlay = overlayOf('split-36', 'row-up');
    expect(keyUnder(overlay, 'KeyC')).toBe('LT3');
    expect(keyUnder(overlay, 'AltLeft')).toBeUndefined();
    expect(keyUnder(overlay, 'constructor')).toBeUndefined();
  });
});
