import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { isOneCharacter, needText, parseNeed } from '../../../src/core/keymap/need.ts';

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

  test.prop([
    fc.oneof(fc.string({ maxLength: 2, unit: 'binary' }), fc.string({ maxLength: 2, unit: 'grapheme' })),
  ])('one character is one grapheme cluster, however many code units it takes', (text) => {
    const clusters = [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)];
    expect(isOneCharacter(text)).toBe(clusters.length === 1);
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
