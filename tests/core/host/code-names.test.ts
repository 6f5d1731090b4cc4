import { describe, expect, test } from 'vitest';
import { codeLabel, codeName } from '../../../src/core/host/code-names.ts';
import { CODES } from '../../../src/core/keymap/codes.ts';

describe('names of keys', () => {
  test.each([
    ['KeyA', 'A', 'A'],
    ['Digit7', '7', '7'],
    ['F1', 'F1', 'F1'],
    ['F24', 'F24', 'F24'],
    ['Enter', 'Enter', 'Enter'],
    ['AudioVolumeUp', 'Volume up', 'Vol+'],
    ['ShiftLeft', 'Left Shift', 'Shift'],
    ['ArrowLeft', 'Left arrow', '←'],
    ['Numpad4', 'Number pad 4', 'Np 4'],
    ['FnLock', 'Fn Lock', 'FnLock'],
  ] as const)('%s is %s, on a cap %s', (code, name, label) => {
    expect([codeName(code), codeLabel(code)]).toEqual([name, label]);
  });

  test('every key has a name of its own in plain words, and a label of at most six characters', () => {
    const names = CODES.map(codeName);
    expect(new Set(names).size).toBe(CODES.length);
    for (const code of CODES) {
      expect(codeName(code)).not.toMatch(/[a-z][A-Z]/);
      expect([...codeLabel(code)].length).toBeLessThanOrEqual(6);
    }
  });
});
