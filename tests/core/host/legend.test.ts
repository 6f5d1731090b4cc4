import { describe, expect, test } from 'vitest';
import type { HostLayout } from '../../../src/core/host/host-layout.ts';
import { actionInWords, codeInWords, legendOf } from '../../../src/core/host/legend.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Action } from '../../../src/core/keymap/types.ts';
import { design } from '../../ui/board/sample.ts';

const keymap = design();

const CASES: readonly { action: Action; legend: string; words: string }[] = [
  { action: { do: 'char', char: 'ß' }, legend: 'ß', words: 'ß' },
  { action: { do: 'char', char: ' ' }, legend: 'Space', words: 'Space' },
  { action: { do: 'char', char: '\u00a0' }, legend: 'nbsp', words: 'no-break space' },
  { action: { do: 'char', char: '\u0301' }, legend: '◌\u0301', words: '◌\u0301' },
  { action: { do: 'key', code: 'KeyJ' }, legend: 'J', words: 'J' },
  { action: { do: 'key', code: 'Slash' }, legend: '/', words: '/' },
  { action: { do: 'key', code: 'Digit1', with: ['ShiftLeft'] }, legend: '!', words: 'Left Shift + 1' },
  { action: { do: 'key', code: 'KeyC', with: ['ControlLeft'] }, legend: 'Ctrl C', words: 'Left Control + C' },
  { action: { do: 'key', code: 'KeyC', with: ['ShiftLeft'] }, legend: 'Shift C', words: 'Left Shift + C' },
  { action: { do: 'key', code: 'Tab', with: ['ShiftLeft'] }, legend: 'Shift Tab', words: 'Left Shift + Tab' },
  { action: { do: 'key', code: 'Numpad7' }, legend: 'Np 7', words: 'Number pad 7' },
  { action: { do: 'key', code: 'ShiftRight' }, legend: 'RShift', words: 'Right Shift' },
  { action: { do: 'key', code: 'Space' }, legend: 'Space', words: 'Space' },
  { action: { do: 'text', text: 'Dear\nall' }, legend: '“Dear all”', words: 'text “Dear all”' },
  {
    action: { do: 'layer', layer: 'symbols', mode: 'while-held' },
    legend: 'Symbols',
    words: 'layer Symbols while held',
  },
  {
    action: { do: 'layer', layer: 'symbols', mode: 'lock' },
    legend: 'Symbols lock',
    words: 'layer Symbols, lock',
  },
  { action: { do: 'layer', layer: 'gone', mode: 'latch' }, legend: 'gone latch', words: 'layer gone, latch' },
  {
    action: { do: 'modifier', code: 'ShiftLeft', mode: 'latch' },
    legend: 'Shift latch',
    words: 'Left Shift, latch',
  },
  { action: { do: 'nothing' }, legend: '', words: 'blank' },
  { action: { do: 'board', label: 'Radio 2' }, legend: 'Radio 2', words: 'board: Radio 2' },
];

describe('legends', () => {
  test.each(CASES)('$action is "$legend", in words "$words"', ({ action, legend, words }) => {
    expect(legendOf(action, { keymap, host: usHost })).toBe(legend);
    expect(actionInWords(action, { keymap, host: usHost })).toBe(words);
  });

  test('a key goes by what it types on the computer, not by its code', () => {
    const swapped: HostLayout = {
      ...usHost,
      outputOf: (code, level) => usHost.outputOf(code === 'KeyY' ? 'KeyZ' : code, level),
    };
    expect(legendOf({ do: 'key', code: 'KeyY' }, { keymap, host: swapped })).toBe('Z');
    expect(codeInWords('KeyY', null)).toBe('Y');
  });

  test('a capital that would be two letters is left small', () => {
    const sharp: HostLayout = { ...usHost, outputOf: () => ({ kind: 'char', char: 'ß' }) };
    expect(legendOf({ do: 'key', code: 'Minus' }, { keymap, host: sharp })).toBe('ß');
  });
});
