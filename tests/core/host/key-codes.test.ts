import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { KEY_NUMBERS } from '../../../src/core/host/key-codes.ts';
import { CODES, isCode } from '../../../src/core/keymap/codes.ts';

const KERNEL_HEADER = '/usr/include/linux/input-event-codes.h';

/** Rows read off the public tables of W3C UI Events `code`, USB HID Usage Tables and Linux input event codes. */
const published = readFileSync(new URL('./data/key-codes.tsv', import.meta.url), 'utf8')
  .split('\n')
  .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith('code\t'))
  .map((line) => line.split('\t'));

describe('key numbers', () => {
  test('agree with W3C UI Events, USB HID Usage Tables and Linux evdev where those list the key', () => {
    expect(published.length).toBe(155);
    for (const [code = '', hid, evdev] of published) {
      if (!isCode(code)) throw new Error(`${code} is no code that a keymap may name`);
      expect([code, KEY_NUMBERS[code]]).toEqual([code, { hidUsage: Number(hid), evdev: Number(evdev) }]);
    }
  });

  test('no two keys share a number', () => {
    for (const kind of ['hidUsage', 'evdev'] as const) {
      const numbers = CODES.map((code) => KEY_NUMBERS[code][kind]).filter((number) => number !== null);
      expect(new Set(numbers).size).toBe(numbers.length);
    }
  });

  test.skipIf(!existsSync(KERNEL_HEADER))(
    'rows beyond the tables carry the numbers of the kernel names',
    () => {
      const header = readFileSync(KERNEL_HEADER, 'utf8');
      const kernel = (name: string) => Number(new RegExp(`#define KEY_${name}\\s+(\\S+)`).exec(header)?.[1]);
      expect(KEY_NUMBERS.NumpadParenLeft.evdev).toBe(kernel('KPLEFTPAREN'));
      expect(KEY_NUMBERS.NumpadParenRight.evdev).toBe(kernel('KPRIGHTPAREN'));
      expect(KEY_NUMBERS.Again.evdev).toBe(kernel('AGAIN'));
      expect(KEY_NUMBERS.Find.evdev).toBe(kernel('FIND'));
      expect(KEY_NUMBERS.Open.evdev).toBe(kernel('OPEN'));
      expect(KEY_NUMBERS.Props.evdev).toBe(kernel('PROPS'));
      expect(KEY_NUMBERS.Select.evdev).toBe(kernel('FRONT'));
      expect(KEY_NUMBERS.Lang3.evdev).toBe(kernel('KATAKANA'));
      expect(KEY_NUMBERS.Lang4.evdev).toBe(kernel('HIRAGANA'));
      expect(KEY_NUMBERS.Lang5.evdev).toBe(kernel('ZENKAKUHANKAKU'));
    },
  );
});
