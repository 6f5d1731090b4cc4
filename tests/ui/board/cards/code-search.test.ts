import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { codeName } from '../../../../src/core/host/code-names.ts';
import { usHost } from '../../../../src/core/host/us.ts';
import { CODES } from '../../../../src/core/keymap/codes.ts';
import { searchCodes } from '../../../../src/ui/board/cards/code-search.ts';

const first = (search: string) => searchCodes(search, usHost, 1)[0]?.code;

describe('searching a key by its name', () => {
  test.each([
    ['enter', 'Enter'],
    ['ESC', 'Escape'],
    ['volume u', 'AudioVolumeUp'],
    ['shift', 'ShiftLeft'],
    ['right shift', 'ShiftRight'],
    [';', 'Semicolon'],
    ['q', 'KeyQ'],
    ['arrow', 'ArrowUp'],
    ['AudioVol', 'AudioVolumeMute'],
    ['  tab ', 'Tab'],
  ])('%j finds %s first', (search, code) => {
    expect(first(search)).toBe(code);
  });

  test('what is typed goes by the host layout', () => {
    const swapped = { ...usHost, outputOf: () => ({ kind: 'char' as const, char: 'ø' }) };
    const [found] = searchCodes('ø', swapped, 3);
    expect(found?.words).toBe('Ø (A on US)');
  });

  test('nothing to find, nothing found; no search, the list', () => {
    expect(searchCodes('no such key', usHost, 5)).toEqual([]);
    expect(searchCodes('', usHost, 500)).toHaveLength(CODES.length);
  });

  test.prop([fc.constantFrom(...CODES)])('every key is found by its own name and by its code', (code) => {
    const found = (search: string) => searchCodes(search, usHost, 999).map((each) => each.code);
    expect(found(codeName(code))).toContain(code);
    expect(found(code)).toContain(code);
  });
});
