import { fc, test as propertyTest } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { findJsonFault } from '../../../src/core/keymap/json-syntax.ts';

function isJson(text: string): boolean {
  try {
    JSON.parse(text);
    return true;
  } catch {
    return false;
  }
}

describe('where a text stops being JSON (RFC 8259)', () => {
  test.each<[string, number, number, string, string]>([
    ['', 1, 1, 'the end of the text', 'a value'],
    ['{', 1, 2, 'the end of the text', 'a name in quotation marks or }'],
    ['{"a" 1}', 1, 6, '"1"', 'a colon'],
    ['{"a": 1 "b": 2}', 1, 9, '"\\""', 'a comma or }'],
    ['{"a": 1,}', 1, 9, '"}"', 'a name in quotation marks'],
    ["{'a': 1}", 1, 2, '"\'"', 'a name in quotation marks or }'],
    ['[1, 2', 1, 6, 'the end of the text', 'a comma or ]'],
    ['[1,]', 1, 4, '"]"', 'a value'],
    ['[1}', 1, 3, '"}"', 'a comma or ]'],
    ['01', 1, 2, '"1"', 'the end'],
    ['[NaN]', 1, 2, '"N"', 'a value or ]'],
    ['1 2', 1, 3, '"2"', 'the end'],
    ['"a', 1, 3, 'the end of the text', 'a closing quotation mark'],
    ['"a\tb"', 1, 3, '"\\t"', 'no control character in a text'],
    ['"\\x"', 1, 2, '"\\\\"', 'a known escape after \\'],
    ['{\n  "a": 1,\r\n  "b": 👍\n}', 3, 8, '"👍"', 'a value'],
  ])('%j: line %i, column %i', (text, line, column, found, expected) => {
    expect(findJsonFault(text)).toEqual({ line, column, found, expected });
    expect(isJson(text)).toBe(false);
  });

  test('a text with a million escapes needs no stack', () => {
    expect(findJsonFault(`"${'\\n'.repeat(1e6)}"`)).toBeUndefined();
  });
});

describe('finds a fault exactly where JSON.parse refuses', () => {
  propertyTest.prop(
    [fc.json(), fc.nat(), fc.constantFrom('', ',', '}', ']', '"', '\\', '0', '-', 'e', ' ', '\n', '\u0001')],
    {
      numRuns: 2000,
    },
  )('for JSON with one sign changed', (json, at, sign) => {
    const place = at % (json.length + 1);
    const text = json.slice(0, place) + sign + json.slice(place + 1);
    expect(findJsonFault(text) === undefined).toBe(isJson(text));
  });

  propertyTest.prop([fc.string({ unit: fc.constantFrom(...'[]{},:"\\ 01.-+eEtrufalsn') })], {
    numRuns: 2000,
  })('for any row of the signs of JSON', (text) => {
    expect(findJsonFault(text) === undefined).toBe(isJson(text));
  });
});
