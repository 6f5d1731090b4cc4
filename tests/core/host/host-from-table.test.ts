import { describe, expect, test } from 'vitest';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { producesExactly } from '../../../src/core/host/produces-exactly.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { usTable } from '../../../src/core/host/us-table.ts';
import { CODES } from '../../../src/core/keymap/codes.ts';
import { SHIPPED_TABLES, shippedTable } from './shipped-tables.ts';
import { eventsOf, routeLine } from './strokes.ts';

const routes = (name: string, char: string) =>
  hostFromTable(shippedTable(name)).routesOf(char).map(routeLine);
const PLAIN = { shift: false, level3: false, caps: false };

describe('ways to type a character', () => {
  test.each([
    ['us', 'a', 'KeyA'],
    ['us', '!', 'ShiftLeft+Digit1'],
    ['us', '\n', 'Enter'],
    ['us', '\t', 'Tab'],
    ['us', ' ', 'Space'],
    ['de', 'ü', 'BracketLeft'],
    ['de', '@', 'AltRight+KeyQ'],
    ['de', '<', 'IntlBackslash'],
    ['de', 'é', 'Equal KeyE'],
    ['us-mac', 'ü', 'AltRight+KeyU KeyU'],
    ['us-intl', 'é', 'AltRight+KeyE'],
    ['us-dvorak', 's', 'Semicolon'],
    ['pl', 'ł', 'AltRight+KeyL'],
    ['pt', 'ã', 'Backslash KeyA'],
    ['fr', 'ê', 'BracketLeft KeyE'],
    ['fr', '1', 'ShiftLeft+Digit1'],
  ])('%s: the first for %s is %s', (name, char, first) => {
    expect(routes(name, char)[0]).toBe(first);
  });

  test('keys that every board has come before others that need fewer modifiers', () => {
    expect(routes('us', '<')).toEqual(['ShiftLeft+Comma', 'IntlBackslash']);
    expect(routes('us', '+')).toEqual(['ShiftLeft+Equal', 'NumpadAdd']);
  });

  test('one stroke comes before two', () => {
    expect(routes('us-intl', "'")).toContain('Quote Space');
    expect(routes('us-intl', 'ä').map((line) => line.split(' ').length)).toEqual([1, 2]);
  });

  test('none where the layout has no way, or what is asked is no character', () => {
    expect(routes('us', 'ü')).toEqual([]);
    expect(routes('us', '')).toEqual([]);
    expect(routes('de', 'dead_acute')).toEqual([]);
  });

  test('no stroke holds a modifier that changes nothing', () => {
    expect(routes('us', ' ')).toEqual(['Space']);
  });

  test('two dead keys', () => {
    expect(routes('us-intl', 'ấ')).toContain('Quote ShiftLeft+Digit6 KeyA');
  });

  test('asking twice gives the same list', () => {
    expect(usHost.routesOf('a')).toBe(usHost.routesOf('a'));
  });
});

describe.each(SHIPPED_TABLES)('%s', (name) => {
  const table = shippedTable(name);
  const host = hostFromTable(table);
  const rows = CODES.flatMap((code) =>
    table.keys[code] === undefined ? [] : [{ code, row: table.keys[code] }],
  );
  const composed = Object.values(table.compose).flatMap((row) => Object.values(row));
  const accented = [...'áàâäãåčçďěğíłñőøřşšťůýžÁÀÂÄÃÅČÇĎĚĞÍŁÑŐØŘŞŠŤŮÝŽấǘṩ'];
  const chars = new Set([...rows.flatMap(({ row }) => row), ...composed, ...accented]);
  chars.delete('');

  test('every route types exactly its character', () => {
    let checked = 0;
    for (const char of chars) {
      for (const route of host.routesOf(char)) {
        const exact = producesExactly(host, eventsOf(route), { kind: 'char', char });
        if (!exact) throw new Error(`${char}: ${routeLine(route)} does not type it`);
        checked += 1;
      }
    }
    expect(checked).toBeGreaterThan(90);
  });

  test('every key that gives a character is a route to it', () => {
    for (const { code, row } of rows) {
      for (const [at, level] of [PLAIN, { ...PLAIN, shift: true }].entries()) {
        const output = host.outputOf(code, level);
        if (output.kind !== 'char') continue;
        expect(output.char).toBe(row[at]);
        const codes = host
          .routesOf(output.char)
          .map((route) => (route.length === 1 ? route[0]?.code : undefined));
        expect(codes).toContain(code);
      }
    }
  });

  test('fewer strokes come first, and no route comes twice', () => {
    for (const char of chars) {
      const found = host.routesOf(char);
      const lengths = found.map((route) => route.length);
      expect(lengths).toEqual(lengths.toSorted((one, other) => one - other));
      expect(new Set(found.map(routeLine)).size).toBe(found.length);
    }
  });

  test('its characters are in NFC, as those of a keymap are', () => {
    for (const char of chars) expect(char.normalize('NFC')).toBe(char);
  });
});

test('the bundled table of us is the one in the file', () => {
  expect(usTable).toEqual(shippedTable('us'));
});
