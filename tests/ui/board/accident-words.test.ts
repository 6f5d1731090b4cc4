import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import type { PressedThing } from '../../../src/core/typist/pressed-things.ts';
import {
  assumptionsInWords,
  curveInWords,
  damageInWords,
  missesInWords,
  reasonInWords,
  runInWords,
} from '../../../src/ui/board/accident-words.ts';
import { chordOver, keyOf, plainKeymap } from '../../core/typist/plain-keymap.ts';

const keymap = plainKeymap({ A: { hold: { do: 'key', code: 'ControlLeft' } } }, [chordOver('ER', 50)]);
const source = { keymap, host: usHost };
const spaceKey = Object.entries(keymap.layers[0]?.places ?? {}).find(
  ([, { tap }]) => tap?.do === 'key' && tap.code === 'Space',
)?.[0];
const press = (key = '', asHold = false): PressedThing => ({ what: 'key', key, layer: 'base', asHold });

describe('what sets something off', () => {
  test.each<[string, readonly PressedThing[], string]>([
    ['letters stand together', [press(keyOf.get('E')), press(keyOf.get('R'))], '“er”'],
    ['what is no letter has its name', [press(keyOf.get('A')), press(spaceKey)], '“a Space”'],
    ['a hold is what it holds', [press(keyOf.get('A'), true), press(keyOf.get('E'))], '“Ctrl e”'],
    ['a chord is what it does', [{ what: 'chord', chord: 'chord-ER' }, press(keyOf.get('E'))], '“Tab e”'],
    ['nothing pressed on purpose', [], 'slips of two neighbouring fingers'],
  ])('%s', (_, things, words) => {
    expect(runInWords(things, source)).toBe(words);
  });

  test('comes with its counts', () => {
    const things = [press(keyOf.get('E')), press(keyOf.get('R'))];
    expect(damageInWords({ things, typedPer1000Words: 83.2, misfires: 2.04 }, source)).toBe(
      '“er”: typed 83 times, about 2 of these',
    );
  });
});

describe('figures in words', () => {
  test('misses', () => {
    expect([0, 0.4, 12.3, 618].map(missesInWords)).toEqual([
      'practically none',
      'practically none',
      'about 12 in 1,000',
      'about 620 in 1,000',
    ]);
  });

  test('the picture of a choice, for who does not see it', () => {
    const now = { ms: 45, misfires: 3, misses: 50 };
    const suggested = { point: { ms: 40, misfires: 2, misses: 60 }, usesPer1000Words: 10, assumed: true };
    expect(curveInWords(now, suggested)).toBe(
      'At 45 ms: misfires about 3, between 1.5 and 6 in 1,000 words; misses about 50 in 1,000. Suggested: 40 ms.',
    );
  });

  test('a suggestion says whether its uses are assumed', () => {
    const point = { ms: 40, misfires: 2, misses: 60 };
    expect(reasonInWords({ point, usesPer1000Words: 10, assumed: true }, 'chord')).toMatch(
      /assumed: 10 uses/,
    );
    expect(reasonInWords({ point, usesPer1000Words: 48, assumed: false }, 'hold')).toMatch(
      /the hold 48 times/,
    );
  });

  test.each([
    [false, 1, /^Assumed: keys of a chord come as close together as skilled hands’/],
    [false, 1.5, /assumed to come 1.5 times as far apart/],
    [true, 1.5, /is yours, as measured/],
  ])('what a chord’s figures assume: measured %s, factor %d', (isMeasured, factor, words) => {
    expect(assumptionsInWords('chord', isMeasured, factor)[0]).toMatch(words);
  });
});
