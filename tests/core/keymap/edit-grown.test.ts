import { describe, expect, test } from 'vitest';
import { timingOfChord } from '../../../src/core/keymap/timing.ts';
import type { Keymap, ShiftedAction } from '../../../src/core/keymap/types.ts';
import { edited, refusal } from './edits.ts';
import { A, B, chord, layer, small, toLayer } from './small.ts';

const SEMICOLON: ShiftedAction = { do: 'char', char: ';' };
const k1 = { layer: 'base', key: 'k1' };
const start: Keymap = small(
  [
    layer('base', {
      k1: { tap: A, onShift: SEMICOLON, hold: B },
      k2: { tap: toLayer('sym'), onShift: SEMICOLON },
    }),
    layer('sym'),
  ],
  [chord('c1', ['k1', 'k2'], { hold: toLayer('sym'), release: 'last-up' })],
);
const at = (keymap: Keymap, key: string) => keymap.layers[0]?.places[key];

describe('the result under Shift', () => {
  test('is set, replaced with a word about it, and taken away', () => {
    const plain = edited(start, { edit: 'set-on-shift', place: k1, action: null });
    expect(plain.title).toBe('Take ; off k1 on Base under Shift');
    expect(at(plain.keymap, 'k1')).toEqual({ tap: A, hold: B });
    const next = edited(start, { edit: 'set-on-shift', place: k1, action: { do: 'key', code: 'Delete' } });
    expect([next.title, next.alongside]).toEqual([
      'Bind Delete on Base under Shift',
      ['Replaced ; under Shift at k1 on Base.'],
    ]);
    expect(edited(plain.keymap, { edit: 'set-on-shift', place: k1, action: SEMICOLON }).keymap).toEqual(
      start,
    );
  });

  test('goes with the tap in whose place it comes, and that is told', () => {
    const { keymap, alongside } = edited(start, { edit: 'unbind', place: k1, side: 'tap' });
    expect([at(keymap, 'k1'), alongside]).toEqual([{ hold: B }, ['Took away ; under Shift.']]);
    expect(at(edited(start, { edit: 'delete-layer', layer: 'sym' }).keymap, 'k2')).toBeUndefined();
  });

  test.each([
    ['nothing is bound', { edit: 'set-on-shift', place: { layer: 'sym', key: 'k1' }, action: SEMICOLON }],
    ['it is a modifier', { edit: 'set-on-shift', place: k1, action: { do: 'key', code: 'AltLeft' } }],
  ] as const)('is refused where %s', (_, edit) => {
    expect(refusal(start, edit)).toMatch(/\.$/);
  });

  test('is refused beside a hold alone', () => {
    const holdOnly = small([layer('base', { k1: { hold: B } })]);
    expect(refusal(holdOnly, { edit: 'set-on-shift', place: k1, action: SEMICOLON })).toMatch(/no tap/);
  });
});

describe('a chord with a hold', () => {
  test('loses it with the layer that it leads to, and stays', () => {
    const { keymap, alongside } = edited(start, { edit: 'delete-layer', layer: 'sym' });
    expect(keymap.chords).toEqual([chord('c1', ['k1', 'k2'], { release: 'last-up' })]);
    expect(alongside).toContain('Took away the hold of the chord c1, which led to SYM.');
  });

  test('is changed field by field; null takes one away', () => {
    const to = { release: null, hold: B, holdAfterMs: 150, tapIfAlone: true, onShift: SEMICOLON };
    const { keymap } = edited(start, { edit: 'change-chord', chord: 'c1', to });
    expect(keymap.chords?.[0]).toEqual(
      chord('c1', ['k1', 'k2'], { hold: B, holdAfterMs: 150, tapIfAlone: true, onShift: SEMICOLON }),
    );
  });

  test('takes what it leaves open from the design, but for the fields that a firing has no use for', () => {
    const keymap: Keymap = {
      ...start,
      timing: { holdAfterMs: 180, quietBeforeMs: 90, sameHandTaps: true, holdBy: 'press-inside' },
    };
    expect(timingOfChord(keymap, chord('c', ['k1', 'k2'], { hold: B, againWithinMs: 40 }))).toEqual({
      holdAfterMs: 180,
      holdBy: 'press-inside',
      quietBeforeMs: 0,
      againWithinMs: 40,
      sameHandTaps: false,
      tapIfAlone: false,
    });
  });
});
