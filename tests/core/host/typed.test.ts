import { describe, expect, test } from 'vitest';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { createTypedReader, typedText } from '../../../src/core/host/typed.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { shippedTable } from './shipped-tables.ts';
import { events } from './strokes.ts';

const de = hostFromTable(shippedTable('de'));
const usMac = hostFromTable(shippedTable('us-mac'));
const usIntl = hostFromTable(shippedTable('us-intl'));

function producedBy(line: string, host = usHost) {
  const reader = createTypedReader(host);
  for (const event of events(line)) reader.feed(event);
  return reader.produced().map((item) => {
    if (item.kind === 'char') return `char ${item.char}`;
    return item.kind === 'key' ? `key ${[...item.modifiers, item.code].join('+')}` : `modifier ${item.code}`;
  });
}

describe('the text that a computer shows', () => {
  test.each([
    ['letters', 'KeyA KeyB', 'ab'],
    ['Shift of either side', '+ShiftLeft KeyA -ShiftLeft +ShiftRight Digit1 -ShiftRight', 'A!'],
    ['rollover', '+KeyT +KeyH -KeyT +KeyE -KeyH -KeyE', 'the'],
    ['Enter and Tab', 'KeyA Enter NumpadEnter Tab KeyB', 'a\n\n\tb'],
    ['Shift and Tab goes back', '+ShiftLeft Tab -ShiftLeft', ''],
    ['keys that type nothing', 'ArrowLeft Backspace F1 KeyA', 'a'],
    ['Control keeps characters back', '+ControlLeft KeyC -ControlLeft KeyC', 'c'],
    ['so do Meta and Alt', '+MetaRight KeyC -MetaRight +AltLeft KeyC -AltLeft +AltRight KeyC -AltRight', ''],
    ['Caps Lock makes capitals of letters only', 'CapsLock KeyA Digit1 CapsLock KeyA', 'A1a'],
    ['Caps Lock and Shift', 'CapsLock +ShiftLeft KeyA Digit1 -ShiftLeft', 'a!'],
    ['number pad signs', 'NumpadAdd NumpadDivide', '+/'],
    ['number pad digits hang on Num Lock', 'Numpad1', ''],
  ])('us: %s', (_, line, text) => {
    expect(typedText(events(line), usHost)).toBe(text);
  });

  test.each([
    ['AltRight is level 3', '+AltRight KeyQ -AltRight', '@'],
    ['level 3 with Shift', '+ShiftLeft +AltRight KeyQ -AltRight -ShiftLeft', 'Ω'],
    ['AltLeft stays Alt', '+AltLeft KeyQ -AltLeft', ''],
    ['Control with AltRight', '+ControlLeft +AltRight KeyQ -AltRight -ControlLeft', ''],
    ['one key', 'BracketLeft', 'ü'],
    ['a dead key and its letter', 'Equal KeyE', 'é'],
    ['a dead key and the space', 'Equal Space', "'"],
    ['a dead key twice', 'Equal Equal', '´'],
    ['a modifier in between', 'Equal +ShiftLeft KeyE -ShiftLeft', 'É'],
    ['Caps Lock in between', 'Equal CapsLock KeyE', 'É'],
    ['a pair that composes to nothing is swallowed', 'Equal KeyQ KeyQ', 'q'],
    ['an arrow ends the wait', 'Equal ArrowLeft KeyE', 'e'],
    ['capital sharp s by Caps Lock', 'CapsLock Minus', 'ẞ'],
  ])('de: %s', (_, line, text) => {
    expect(typedText(events(line), de)).toBe(text);
  });

  test('us mac: Option and u, then u', () => {
    expect(typedText(events('+AltRight KeyU -AltRight KeyU'), usMac)).toBe('ü');
  });

  test('us intl: two dead keys and a letter', () => {
    expect(typedText(events('Quote +ShiftLeft Digit6 -ShiftLeft KeyA'), usIntl)).toBe('ấ');
  });

  test('us intl: a third dead key ends the wait', () => {
    expect(typedText(events('Quote Backquote Quote KeyA'), usIntl)).toBe('a');
  });
});

describe('what is produced', () => {
  test.each([
    ['a character', '+ShiftLeft KeyA -ShiftLeft', ['char A']],
    [
      'a key that types nothing, with its modifiers',
      '+ShiftLeft ArrowLeft -ShiftLeft',
      ['key ShiftLeft+ArrowLeft'],
    ],
    [
      'a shortcut',
      '+ControlLeft +ShiftRight KeyZ -ShiftRight -ControlLeft',
      ['key ControlLeft+ShiftRight+KeyZ'],
    ],
    ['a modifier alone', 'MetaLeft', ['modifier MetaLeft']],
    [
      'a modifier alone, then with a key',
      'AltLeft +AltLeft Tab -AltLeft',
      ['modifier AltLeft', 'key AltLeft+Tab'],
    ],
    [
      'of two modifiers the one pressed last',
      '+ControlLeft +ShiftLeft -ShiftLeft -ControlLeft',
      ['modifier ShiftLeft'],
    ],
    ['no bare tap where a key came between', '+ShiftLeft +KeyA -ShiftLeft -KeyA', ['char A']],
    [
      'no bare tap under a key that is down',
      '+KeyA +ShiftLeft -ShiftLeft -KeyA',
      ['char a', 'modifier ShiftLeft'],
    ],
    ['Caps Lock', 'CapsLock KeyA', ['key CapsLock', 'char A']],
  ])('%s', (_, line, expected) => {
    expect(producedBy(line)).toEqual(expected);
  });

  test('strokes that came to nothing are not forgotten', () => {
    expect(producedBy('Equal KeyQ', de)).toEqual(['key Equal', 'key KeyQ']);
  });

  test('what is still open: a waiting dead key, keys that are down', () => {
    const reader = createTypedReader(de);
    for (const event of events('Equal +ShiftLeft')) reader.feed(event);
    expect([reader.isPending(), reader.down()]).toEqual([true, ['ShiftLeft']]);
  });
});
