import { fc, test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { correctedTable, tableGives } from '../../../src/core/host/corrected-host.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { readHostTable } from '../../../src/core/host/host-table.ts';
import { producesExactly } from '../../../src/core/host/produces-exactly.ts';
import { TYPING_CODES } from '../../../src/core/host/typing-codes.ts';
import type { Code } from '../../../src/core/keymap/codes.ts';
import type { Correction } from '../../../src/core/keymap/types.ts';
import { SHIPPED_TABLES, shippedTable } from './shipped-tables.ts';
import { eventsOf, routeLine } from './strokes.ts';

const LEVELS: readonly Correction['level'][] = ['plain', 'shift', 'level3', 'shift-level3'];
const OFF = { shift: false, level3: false, caps: false };

const correction = (code: Code, level: Correction['level'], gives: string): Correction => ({
  code,
  level,
  gives,
});
const hostWith = (name: string, ...corrections: Correction[]) =>
  hostFromTable(correctedTable(shippedTable(name), corrections));
const firstRoute = (name: string, char: string, ...corrections: Correction[]) =>
  hostWith(name, ...corrections)
    .routesOf(char)
    .map(routeLine)[0];

describe('a corrected key', () => {
  test.each<[string, string, Correction, string | undefined]>([
    ['gives a character that the layout lacked', 'ł', correction('KeyL', 'level3', 'ł'), 'AltRight+KeyL'],
    ['moves one', 'z', correction('KeyY', 'plain', 'z'), 'KeyY'],
    ['is used where the table has no such key', '§', correction('IntlRo', 'plain', '§'), 'IntlRo'],
    ['may give nothing, so that the next best serves', '`', correction('Backquote', 'plain', ''), undefined],
    ['holds Shift', '£', correction('Digit3', 'shift', '£'), 'ShiftLeft+Digit3'],
    ['holds both', '¿', correction('Slash', 'shift-level3', '¿'), 'ShiftLeft+AltRight+Slash'],
    ['may be dead and then composes', 'ü', correction('Quote', 'plain', 'dead_diaeresis'), 'Quote KeyU'],
  ])('on us, %s', (_, char, change, route) => {
    expect(firstRoute('us', char, change)).toBe(route);
  });

  test('on us mac, ü is Option+U and then U until the dead key is taken away', () => {
    expect(firstRoute('us-mac', 'ü')).toBe('AltRight+KeyU KeyU');
    expect(firstRoute('us-mac', 'ü', correction('KeyU', 'level3', ''))).toBeUndefined();
  });

  test('of a later correction nothing but its own level changes', () => {
    const table = shippedTable('de');
    const other = correctedTable(table, [
      correction('KeyE', 'level3', '€'),
      correction('KeyE', 'plain', 'è'),
    ]);
    expect(LEVELS.map((level) => tableGives(other, 'KeyE', level))).toEqual([
      'è',
      'E',
      '€',
      tableGives(table, 'KeyE', 'shift-level3'),
    ]);
    expect({ ...other.keys, KeyE: table.keys.KeyE }).toEqual(table.keys);
  });

  // As XKB's key types ALPHABETIC and FOUR_LEVEL_ALPHABETIC: Lock turns a letter's case and leaves the rest.
  test.each([
    ['é', 'É'],
    ['É', 'é'],
    ['ß', 'ß'],
    ['#', '#'],
    ['dead_acute', 'dead_acute'],
    ['', ''],
  ])('%j is %j with Caps Lock on', (gives, withCaps) => {
    const table = correctedTable(shippedTable('us'), [correction('KeyE', 'plain', gives)]);
    expect([table.keys.KeyE?.[0], table.keys.KeyE?.[4]]).toEqual([gives, withCaps]);
  });
});

describe('level 3', () => {
  test('comes with the first correction that gives something there', () => {
    expect(correctedTable(shippedTable('us'), [correction('KeyA', 'plain', 'q')]).level3).toBeNull();
    expect(correctedTable(shippedTable('us'), [correction('KeyA', 'level3', '')]).level3).toBeNull();
    expect(correctedTable(shippedTable('us'), [correction('KeyA', 'level3', 'æ')]).level3).toBe('AltRight');
  });
});

test('without corrections it is the same table', () => {
  const table = shippedTable('fr');
  expect(correctedTable(table, [])).toBe(table);
});

propertyTest.prop(
  [
    fc.constantFrom(...SHIPPED_TABLES),
    fc.constantFrom(...TYPING_CODES),
    fc.constantFrom(...LEVELS),
    fc.constantFrom('a', 'é', 'ł', '≥', '€', ' '),
  ],
  { numRuns: 200 },
)(
  'whatever is corrected: still a table, and each way to the character types it',
  (name, code, level, char) => {
    const table = correctedTable(shippedTable(name), [correction(code, level, char)]);
    expect(readHostTable(table)).toEqual({ ok: true, value: table });
    const host = hostFromTable(table);
    const place = { ...OFF, shift: level.startsWith('shift'), level3: level.endsWith('level3') };
    expect(host.outputOf(code, place)).toEqual({ kind: 'char', char });
    const routes = host.routesOf(char);
    expect(routes.length).toBeGreaterThan(0);
    for (const route of routes) {
      expect(producesExactly(host, eventsOf(route), { kind: 'char', char })).toBe(true);
    }
  },
);
