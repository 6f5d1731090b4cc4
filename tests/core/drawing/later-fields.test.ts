import { describe, expect, test } from 'vitest';
import { worksheetRows } from '../../../src/core/drawing/worksheet-rows.ts';
import { actionInWords, chordDoes, legendOf, tapInWords, tapLegend } from '../../../src/core/host/legend.ts';
import { usHost } from '../../../src/core/host/us.ts';
import type { Action, Keymap, ShiftedAction } from '../../../src/core/keymap/types.ts';
import { chord, layer, small } from '../keymap/small.ts';

const comma: Action = { do: 'char', char: ',' };
const semicolon: ShiftedAction = { do: 'char', char: ';' };
const keymap: Keymap = small(
  [layer('base', { k1: { tap: comma, onShift: semicolon, hold: { do: 'repeat' }, tapIfAlone: true } })],
  [
    chord('c1', ['k1', 'k2'], {
      release: 'last-up',
      hold: { do: 'word-shift' },
      onShift: { do: 'nothing' },
      holdAfterMs: 150,
    }),
  ],
);
const source = { keymap, host: usHost };

describe('the later fields in words', () => {
  test.each([
    [legendOf({ do: 'repeat' }, source), 'Repeat'],
    [legendOf({ do: 'word-shift' }, source), 'Shift word'],
    [actionInWords({ do: 'repeat' }, source), 'repeat the last output'],
    [actionInWords({ do: 'word-shift' }, source), 'Shift for one word'],
    [tapLegend(comma, semicolon, source), ', ⇧;'],
    [tapLegend(comma, { do: 'nothing' }, source), ','],
    [tapInWords(comma, semicolon, source), ', (under Shift ;)'],
    [chordDoes({ ...chord('c', ['k1', 'k2']), hold: comma }, source), 'Tab, held: ,'],
  ])('%s', (words, expected) => {
    expect(words).toBe(expected);
  });

  test('on the worksheet: what comes under Shift behind the tap, the hold of a chord, what settles it', () => {
    const rows = worksheetRows(keymap, usHost);
    const key = rows.find(({ keys }) => keys === 'k1');
    expect(key?.tap.words).toBe(',; under Shift: ;');
    expect(key?.tap.codes).toBe('Comma; under Shift: Semicolon');
    expect(key?.hold.words).toBe('repeat the last output');
    expect(key?.timing).toMatch(/tap if held alone$/);
    const ofChord = rows.find(({ part }) => part === 'chord');
    expect(ofChord?.tap.words).toBe('Tab; under Shift: blank');
    expect(ofChord?.tap.codes).toBe('Tab; under Shift: none');
    expect(ofChord?.hold.words).toBe('Shift for one word');
    expect(ofChord?.timing).toBe(
      'window 45 ms, ends with its last key, hold after 150 ms, hold by time only',
    );
  });
});
