import { describe, expect, test } from 'vitest';
import { needText, parseNeed } from '../../../src/core/keymap/need.ts';

describe('a need is written as the character, key:CODE or shortcut:Modifiers+CODE', () => {
  test.each([
    ['a', { kind: 'char', char: 'a' }],
    ['+', { kind: 'char', char: '+' }],
    [' ', { kind: 'char', char: ' ' }],
    ['é', { kind: 'char', char: 'é' }],
    ['key:ArrowLeft', { kind: 'key', code: 'ArrowLeft' }],
    ['shortcut:Control+Alt+Delete', { kind: 'shortcut', modifiers: ['Control', 'Alt'], code: 'Delete' }],
  ])('%j is read and written back', (text, need) => {
    expect(parseNeed(text)).toEqual({ ok: true, value: need });
    expect(needText(need as never)).toBe(text);
  });

  test('a decomposed character is kept in NFC', () => {
    expect(parseNeed('e\u0301')).toEqual({ ok: true, value: { kind: 'char', char: '\u00e9' } });
  });

  test.each([
    '',
    'ab',
    'key:',
    'key:Foo',
    'shortcut:Delete',
    'shortcut:Ctrl+Delete',
    'shortcut:Alt+Alt+Delete',
  ])('%j is refused with what was found', (text) => {
    const read = parseNeed(text);
    expect(read.ok).toBe(false);
    expect(!read.ok && read.problem).toContain(JSON.stringify(text));
  });
});
