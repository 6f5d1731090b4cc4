import { describe, expect, test } from 'vitest';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { modifierName, producesExactly } from '../../../src/core/host/produces-exactly.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { MODIFIERS } from '../../../src/core/keymap/codes.ts';
import { type Need, parseNeed } from '../../../src/core/keymap/need.ts';
import { shippedTable } from './shipped-tables.ts';
import { events } from './strokes.ts';

const de = hostFromTable(shippedTable('de'));

function need(text: string): Need {
  const read = parseNeed(text);
  if (!read.ok) throw new Error(read.problem);
  return read.value;
}

describe('on us', () => {
  test.each([
    ['A', '+ShiftLeft KeyA -ShiftLeft'],
    ['A', '+ShiftRight +KeyA -ShiftRight -KeyA'],
    ['+', 'NumpadAdd'],
    ['key:KeyA', 'KeyA'],
    ['key:Enter', 'Enter'],
    ['key:CapsLock', 'CapsLock'],
    ['key:ShiftLeft', 'ShiftLeft'],
    ['shortcut:Control+KeyC', '+ControlRight KeyC -ControlRight'],
    ['shortcut:Control+KeyC', '+ControlLeft +ControlRight KeyC -ControlRight -ControlLeft'],
    ['shortcut:Control+Alt+Delete', '+AltLeft +ControlLeft Delete -ControlLeft -AltLeft'],
    ['shortcut:Shift+Tab', '+ShiftLeft Tab -ShiftLeft'],
    ['shortcut:Shift+KeyA', '+ShiftLeft KeyA -ShiftLeft'],
  ])('%s by %s', (text, line) => {
    expect(producesExactly(usHost, events(line), need(text))).toBe(true);
  });

  test.each([
    ['nothing at all', 'a', ''],
    ['another character', 'a', 'KeyB'],
    ['the character twice', 'a', 'KeyA KeyA'],
    ['another key besides', 'a', 'KeyA ArrowLeft'],
    ['a modifier tapped besides', 'a', 'KeyA MetaLeft'],
    ['a key that stays down', 'a', '+KeyA'],
    ['Control held', 'a', '+ControlLeft KeyA -ControlLeft'],
    ['a modifier held', 'key:KeyA', '+ShiftLeft KeyA -ShiftLeft'],
    ['the key twice', 'key:KeyA', 'KeyA KeyA'],
    ['another key', 'key:KeyA', 'KeyB'],
    ['a modifier tapped before', 'key:KeyA', 'AltLeft KeyA'],
    ['the other side', 'key:ShiftLeft', 'ShiftRight'],
    ['the modifier twice', 'key:ShiftLeft', 'ShiftLeft ShiftLeft'],
    ['a modifier inside another', 'key:ShiftLeft', '+AltLeft ShiftLeft -AltLeft'],
    ['a modifier with a key', 'key:ShiftLeft', '+ShiftLeft KeyA -ShiftLeft'],
    ['a modifier too many', 'shortcut:Control+KeyC', '+ControlLeft +ShiftLeft KeyC -ShiftLeft -ControlLeft'],
    ['a modifier too few', 'shortcut:Control+Alt+Delete', '+ControlLeft Delete -ControlLeft'],
    ['the modifier came up before', 'shortcut:Control+KeyC', 'ControlLeft KeyC'],
    ['a key besides', 'shortcut:Control+KeyC', '+ControlLeft KeyC KeyV -ControlLeft'],
  ])('not with %s: %s by %s', (_, text, line) => {
    expect(producesExactly(usHost, events(line), need(text))).toBe(false);
  });
});

describe('on de', () => {
  test.each([
    ['é', 'Equal KeyE', true],
    ["'", 'Equal Space', true],
    ['@', '+AltRight KeyQ -AltRight', true],
    ['é', 'Equal KeyE Equal', false],
    ['e', 'Equal KeyE', false],
    ['q', 'Equal KeyQ KeyQ', false],
    ['key:Equal', 'Equal', true],
    ['key:KeyZ', 'KeyZ', true],
    ['y', 'KeyZ', true],
  ])('%s by %s: %s', (text, line, expected) => {
    expect(producesExactly(de, events(line), need(text))).toBe(expected);
  });
});

test('modifiers have a name without their side', () => {
  const names = ['Control', 'Control', 'Shift', 'Shift', 'Alt', 'Alt', 'Meta', 'Meta'];
  expect(MODIFIERS.map(modifierName)).toEqual(names);
  expect(modifierName('KeyA')).toBeUndefined();
});
