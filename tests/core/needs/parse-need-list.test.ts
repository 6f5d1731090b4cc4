import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { CODES } from '../../../src/core/keymap/codes.ts';
import { needText } from '../../../src/core/keymap/need.ts';
import { parseNeedList } from '../../../src/core/needs/parse-need-list.ts';

function textsOf(text: string): string[] {
  const read = parseNeedList(text, 'mine');
  if (!read.ok) throw new Error(read.problem.join('; '));
  return read.value.needs.map(needText);
}

describe('a plain list', () => {
  test.each([
    ['one need a line', 'a\nkey:F5\nshortcut:Control+KeyC\n', ['a', 'key:F5', 'shortcut:Control+KeyC']],
    ['carriage returns', 'a\r\nb\r\n', ['a', 'b']],
    ['a line of one space is the space', 'a\n \nb', ['a', ' ', 'b']],
    ['blank lines are skipped', '\n\na\n\t\n   \n', ['a']],
    ['blanks around a need', '  key:F5  ', ['key:F5']],
    ['a no-break space is a character', '\u00a0', ['\u00a0']],
    ['a byte order mark is not', '\ufeffa', ['a']],
    ['doubles go', 'a\nb\na', ['a', 'b']],
    ['characters in NFC', 'u\u0308\n\u00fc', ['\u00fc']],
    ['braces are needs', '{\n}\n', ['{', '}']],
    ['an empty file', '', []],
  ])('%s', (_, text, needs) => {
    expect(textsOf(text)).toEqual(needs);
  });

  test('takes the name that it is given', () => {
    const read = parseNeedList('a', 'mine');
    expect(read.ok && read.value.name).toBe('mine');
  });

  test('names every bad line by its number', () => {
    const read = parseNeedList('a\nbc\n\nkey:Nope', 'mine');
    expect(read.ok ? [] : read.problem.map((problem) => problem.split(':')[0])).toEqual(['line 2', 'line 4']);
  });

  test('refuses more needs than a design may have', () => {
    const read = parseNeedList('a\n'.repeat(5001), 'mine');
    expect(read).toEqual({ ok: false, problem: ['found 5001 needs, expected 5000 at most'] });
  });
});

describe('a list in JSON', () => {
  test('brings its own name', () => {
    const read = parseNeedList('{ "name": "River", "needs": ["≥", " ", "key:F5"] }', 'mine');
    expect(read.ok && [read.value.name, read.value.needs.map(needText)]).toEqual([
      'River',
      ['≥', ' ', 'key:F5'],
    ]);
  });

  test.each([
    ['{ "needs": ["a"', 'no JSON'],
    ['{ "name": "x", "needs": "a" }', 'needs: found "a", expected a list of needs'],
    ['{ "name": "x", "needs": ["a", 7] }', 'needs[1]: found 7, expected a need as a text'],
    ['{ "needs": ["a"] }', 'name: found nothing, expected a text'],
    ['{ "name": "x", "needs": ["a", "bc"] }', 'needs[1]: found "bc"'],
  ])('%s is refused with %s', (text, part) => {
    const read = parseNeedList(text, 'mine');
    expect(read.ok ? '' : read.problem.join()).toContain(part);
  });
});

const someNeed = fc.oneof(
  fc.constantFrom(...CODES).map((code) => `key:${code}`),
  fc
    .integer({ min: 0x21, max: 0x17e })
    .filter((point) => point < 0x7f || point > 0xa0)
    .map((point) => String.fromCharCode(point).normalize('NFC')),
  fc.constant(' '),
);

property.prop([fc.uniqueArray(someNeed)])('a list reads the same from lines and from JSON', (texts) => {
  expect(textsOf(texts.join('\n'))).toEqual(texts);
  expect(textsOf(JSON.stringify({ name: 'mine', needs: texts }))).toEqual(texts);
});
