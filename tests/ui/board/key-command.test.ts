import { describe, expect, test } from 'vitest';
import { commandOf, type PressedKey } from '../../../src/ui/board/key-command.ts';

const press = (key: string, more: Partial<PressedKey> = {}): PressedKey => ({
  key,
  ctrlKey: false,
  metaKey: false,
  altKey: false,
  shiftKey: false,
  altGraph: false,
  isComposing: false,
  ...more,
});

describe('a press on a focused key', () => {
  test.each([
    [press('ArrowLeft'), { command: 'walk', direction: 'left' }],
    [press('ArrowDown'), { command: 'walk', direction: 'down' }],
    [press('Enter'), { command: 'open' }],
    [press(' '), { command: 'select' }],
    [press('Delete'), { command: 'unbind' }],
    [press('Backspace'), { command: 'unbind' }],
    [press('Escape'), { command: 'leave' }],
    [press('ö'), { command: 'bind', char: 'ö' }],
    [press('o\u0308'), { command: 'bind', char: 'ö' }],
    [press('A', { shiftKey: true }), { command: 'bind', char: 'A' }],
    [press('€', { altGraph: true, ctrlKey: true, altKey: true }), { command: 'bind', char: '€' }],
    [press('z', { ctrlKey: true }), null],
    [press('k', { metaKey: true }), null],
    [press('ArrowLeft', { altKey: true }), null],
    [press('Tab'), null],
    [press('Dead'), null],
    [press('F5'), null],
    [press('Shift', { shiftKey: true }), null],
    [press('あ', { isComposing: true }), null],
  ])('%j asks for %j', (pressed, command) => {
    expect(commandOf(pressed, false)).toEqual(command);
  });

  test.each([
    [press('Enter'), { command: 'put', side: 'tap' }],
    [press('Enter', { shiftKey: true }), { command: 'put', side: 'hold' }],
    [press(' '), { command: 'put', side: 'tap' }],
    [press('Escape'), { command: 'leave' }],
    [press('ArrowUp'), { command: 'walk', direction: 'up' }],
  ])('while something is carried, %j asks for %j', (pressed, command) => {
    expect(commandOf(pressed, true)).toEqual(command);
  });
});
