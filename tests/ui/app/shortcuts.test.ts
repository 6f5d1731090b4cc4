// @vitest-environment happy-dom
import { expect, test } from 'vitest';
import { isTextField } from '../../../src/ui/app/is-text-field.ts';
import { commandOf } from '../../../src/ui/app/shortcuts.ts';

const pressed = (keys: string) => ({
  key: keys.split('+').at(-1) ?? '',
  ctrlKey: keys.includes('Ctrl'),
  metaKey: keys.includes('Cmd'),
  shiftKey: keys.includes('Shift'),
  altKey: keys.includes('Alt'),
});

test.each([
  ['Ctrl+z', 'undo'],
  ['Cmd+z', 'undo'],
  ['Ctrl+Shift+Z', 'redo'],
  ['Cmd+Shift+z', 'redo'],
  ['Ctrl+y', 'redo'],
  ['Ctrl+s', 'save'],
  ['Cmd+k', 'find'],
  ['z', null],
  ['Shift+Z', null],
  ['Ctrl+Alt+z', null],
  ['Ctrl+Cmd+z', null],
  ['Ctrl+Shift+Y', null],
  ['Ctrl+a', null],
])('%s means %o', (keys, command) => {
  expect(commandOf(pressed(keys))).toBe(command);
});

test.each([
  ['<input type="text">', true],
  ['<input type="search">', true],
  ['<textarea></textarea>', true],
  ['<div contenteditable="true"></div>', true],
  ['<input type="range">', false],
  ['<input type="radio">', false],
  ['<button></button>', false],
  ['<svg></svg>', false],
])('text is typed into %s: %o', (html, expected) => {
  document.body.innerHTML = html;
  expect(isTextField(document.body.firstElementChild)).toBe(expected);
});
