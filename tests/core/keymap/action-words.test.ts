import { describe, expect, test } from 'vitest';
import { actionWords, bindingWords } from '../../../src/core/keymap/action-words.ts';
import type { Action } from '../../../src/core/keymap/types.ts';
import { A, layer, small, toLayer } from './small.ts';

const keymap = small([layer('base'), layer('sym')]);

describe('actions in words, for the names of steps', () => {
  test.each<[Action, string]>([
    [{ do: 'key', code: 'KeyJ' }, 'J'],
    [{ do: 'key', code: 'Digit1', with: ['ShiftLeft'] }, 'Shift left + 1'],
    [{ do: 'key', code: 'F12' }, 'F12'],
    [{ do: 'key', code: 'AudioVolumeUp' }, 'Audio volume up'],
    [{ do: 'key', code: 'Numpad0' }, 'Numpad 0'],
    [{ do: 'char', char: ' ' }, 'space'],
    [{ do: 'char', char: '≥' }, '≥'],
    [{ do: 'text', text: 'a\nb' }, '"a\\nb"'],
    [toLayer('sym'), 'layer SYM, while held'],
    [{ do: 'layer', layer: 'none', mode: 'lock' }, 'layer none, lock'],
    [{ do: 'modifier', code: 'AltRight', mode: 'latch' }, 'Alt right, latch'],
    [{ do: 'nothing' }, 'blank'],
    [{ do: 'board', label: 'restart' }, 'restart'],
  ])('%j is %j', (action, words) => {
    expect(actionWords(keymap, action)).toBe(words);
  });

  test('a binding of both says which is the hold', () => {
    expect(bindingWords(keymap, { tap: A, hold: toLayer('sym') })).toBe('A and layer SYM, while held (hold)');
  });
});
