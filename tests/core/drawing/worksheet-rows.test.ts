import { describe, expect, test } from 'vitest';
import { worksheetRows } from '../../../src/core/drawing/worksheet-rows.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { smallDesign } from './small-design.ts';

const rows = worksheetRows(smallDesign, usHost);
const row = (layer: string, keys: string) => rows.find((each) => each.layer === layer && each.keys === keys);

describe('the rows of a worksheet', () => {
  test('every key of every layer in reading order, then the chords', () => {
    expect(rows.map(({ part, layer, keys }) => `${part} ${layer} ${keys}`)).toEqual([
      'key Base M',
      'key Base I',
      'key Base T',
      'key Up M',
      'key Up I',
      'key Up T',
      'key =Both M',
      'key =Both I',
      'key =Both T',
      'chord Base, Up M I',
      'chord every layer M T',
    ]);
  });

  // USB HID Usage Tables, keyboard page 0x07: Left Shift 0xE1, [ and { 0x2F, Left Control 0xE0, c 0x06, Tab 0x2B.
  test('a character is spelled as the strokes that type it on the host layout', () => {
    expect(row('Base', 'M')?.tap).toEqual({
      words: '{',
      codes: 'ShiftLeft+BracketLeft',
      usages: '0x0700E1+0x07002F',
    });
  });

  test('a hold and its timing stand beside the tap, with what the keymap says where the key says nothing', () => {
    expect(row('Base', 'M')?.hold).toEqual({
      words: 'Left Control',
      codes: 'ControlLeft',
      usages: '0x0700E0',
    });
    expect(row('Base', 'M')?.timing).toBe(
      'hold after 210 ms, hold by a tap inside, quiet before 120 ms, same hand taps',
    );
  });

  test('a key with one side only has nothing to settle', () => {
    expect(row('Base', 'I')?.timing).toBe('');
  });

  test('a key with modifiers, and a layer', () => {
    expect(row('Base', 'T')?.tap).toEqual({
      words: 'Left Control + C',
      codes: 'ControlLeft+KeyC',
      usages: '0x0700E0+0x070006',
    });
    expect(row('Base', 'T')?.hold).toEqual({ words: 'layer Up while held', codes: '', usages: '' });
  });

  test('a character that the host layout cannot type says so', () => {
    expect(row('Up', 'M')?.tap).toEqual({ words: 'ł', codes: 'no route on this host layout', usages: '' });
  });

  test('text is spelled stroke by stroke', () => {
    expect(row('Up', 'I')?.tap.codes).toBe('ShiftLeft+KeyH then KeyI');
    expect(row('Up', 'I')?.hold.words).toBe('blank');
  });

  test('latches, functions of the board, and keys without a usage', () => {
    expect(row('=Both', 'M')?.tap).toMatchObject({ words: 'Left Shift latch', codes: 'ShiftLeft' });
    expect(row('=Both', 'I')?.tap).toEqual({ words: 'board: Radio 2', codes: '', usages: '' });
    expect(row('=Both', 'T')?.tap).toEqual({ words: 'Fn', codes: 'Fn', usages: 'none' });
  });

  test('a key without a binding falls through, on the base layer it does nothing', () => {
    expect(row('Up', 'T')?.tap.words).toBe('falls through');
    const bare = { ...smallDesign, layers: [{ id: 'base', name: 'Base', places: {} }], chords: [] };
    expect(worksheetRows(bare, usHost).map(({ tap }) => tap.words)).toEqual(Array(3).fill('does nothing'));
  });

  test('a key may be called like what every object has', () => {
    const named = {
      ...smallDesign,
      board: {
        name: 'One key',
        keys: smallDesign.board.keys.slice(0, 1).map((key) => ({ ...key, id: 'constructor' })),
      },
      layers: [{ id: 'base', name: 'Base', places: {} }],
      chords: [],
    };
    expect(worksheetRows(named, usHost)[0]).toMatchObject({
      keys: 'constructor',
      tap: { words: 'does nothing' },
    });
  });

  test('a chord names its keys, its window and its quiet time', () => {
    expect(rows.filter(({ part }) => part === 'chord')).toMatchObject([
      {
        name: 'c1',
        keys: 'M I',
        timing: 'window 45 ms, quiet before 90 ms',
        tap: { codes: 'Tab', usages: '0x07002B' },
      },
      { name: 'Say "yes"', timing: 'window 50 ms', tap: { words: 'Space', codes: 'Space' } },
    ]);
  });
});
