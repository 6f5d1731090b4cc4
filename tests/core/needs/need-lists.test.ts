import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { needText, parseNeed } from '../../../src/core/keymap/need.ts';
import { NEED_LISTS, needListNamed } from '../../../src/core/needs/need-lists.ts';

function charsOf(name: string): string[] {
  return (needListNamed(name)?.needs ?? []).flatMap((need) => (need.kind === 'char' ? [need.char] : []));
}

const ascii = charsOf('ascii');
const missingFrom = (name: string) => ascii.filter((char) => !charsOf(name).includes(char)).join('');

describe('built-in need lists', () => {
  test.each(NEED_LISTS.map((list) => [list.name, list] as const))(
    '%s has a title, a description and no double',
    (name, list) => {
      expect(needListNamed(name)).toBe(list);
      expect(list.title).not.toBe('');
      expect(list.description).toMatch(/\.$/);
      const texts = list.needs.map(needText);
      expect(new Set(texts).size).toBe(texts.length);
      expect(texts.length).toBeGreaterThan(0);
      for (const text of texts) expect(parseNeed(text).ok).toBe(true);
    },
  );

  test('carry the names that the command line promises', () => {
    const promised = [
      'ascii',
      'editing',
      'function-keys',
      'media',
      'modifiers',
      'shortcuts',
      'shortcuts-macos',
    ];
    const languages = ['posix', 'ecmascript', 'python', 'c', 'rust', 'bash', 'html', 'json'];
    expect(NEED_LISTS.map(({ name }) => name).toSorted()).toEqual([...promised, ...languages].toSorted());
  });

  test('an unknown name is no list', () => {
    expect(needListNamed('nowhere')).toBeUndefined();
  });

  test('RFC 20 (ASCII format for network interchange): 95 printing characters from space to tilde, in its order', () => {
    // RFC 20, section 4: columns 2 to 7 of the code table less DEL.
    expect(ascii.length).toBe(95);
    expect(ascii.slice(0, 17).join('')).toBe(' !"#$%&\'()*+,-./0');
    expect(ascii.at(-1)).toBe('~');
    expect(ascii).toEqual([...ascii].sort((one, other) => (one < other ? -1 : 1)));
  });

  test('every printing character of ASCII can be typed on us', () => {
    expect(ascii.filter((char) => usHost.routesOf(char).length === 0)).toEqual([]);
  });

  test('POSIX.1-2017, Base Definitions 6.1: the printing characters of the portable character set are those of ASCII', () => {
    expect(charsOf('posix')).toEqual(ascii);
  });
});

describe('lists of programming languages against what their standards say of ASCII', () => {
  test('The Python Language Reference, 2.6: $, ? and ` are used nowhere but in strings and comments', () => {
    expect(missingFrom('python')).toBe('$?`');
  });

  test('ISO/IEC 9899:2018, 5.2.1: 52 letters, 10 digits, 29 graphic characters and the space', () => {
    expect(charsOf('c').length).toBe(52 + 10 + 29 + 1);
    expect(missingFrom('c')).toBe('$@`');
  });

  test('ECMA-262 uses all printing characters of ASCII but @', () => {
    expect(missingFrom('ecmascript')).toBe('@');
  });

  test('The Rust Reference has no token with a grave accent', () => {
    expect(missingFrom('rust')).toBe('`');
  });

  test('the shell leaves no character of ASCII without a meaning', () => {
    expect(missingFrom('bash')).toBe('');
  });

  test('RFC 8259: a text of every kind of value and escape is written with the list alone', () => {
    const text = JSON.stringify({
      '': [true, false, null, -1.5e-10, 1e21, '\b\f\n\r\t"\\', '\u0007', '\ud800'],
    });
    expect([...text].filter((char) => !charsOf('json').includes(char))).toEqual([]);
    expect(missingFrom('json')).toContain('#');
  });
});

describe('lists of keys and shortcuts', () => {
  test.each([
    ['function-keys', 12],
    ['modifiers', 8],
    ['editing', 14],
    ['media', 9],
  ])('%s holds %i keys and nothing else', (name, count) => {
    const needs = needListNamed(name)?.needs ?? [];
    expect(needs.length).toBe(count);
    expect(needs.every(({ kind }) => kind === 'key')).toBe(true);
  });

  test('shortcuts of Windows and Linux go by Control, those of macOS by Meta', () => {
    const texts = (name: string) => (needListNamed(name)?.needs ?? []).map(needText);
    expect(texts('shortcuts')).toEqual(
      expect.arrayContaining(['shortcut:Control+KeyC', 'shortcut:Control+Alt+Delete', 'shortcut:Alt+Tab']),
    );
    expect(texts('shortcuts-macos')).toEqual(
      expect.arrayContaining(['shortcut:Meta+KeyC', 'shortcut:Meta+Tab', 'shortcut:Shift+Meta+KeyZ']),
    );
    expect(texts('shortcuts-macos')).not.toContain('shortcut:Control+KeyC');
  });
});
