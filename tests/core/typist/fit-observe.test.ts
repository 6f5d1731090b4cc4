import { describe, expect, test } from 'vitest';
import {
  clockStepMs,
  NO_SHARES,
  observed,
  observedChord,
  pairSharesOf,
  type RecordedKey,
} from '../../../src/core/typist/fit-observe.ts';
import {
  addedTo,
  FROM_THUMB_GROUP,
  NOTHING_MEASURED,
  TO_THUMB_GROUP,
} from '../../../src/core/typist/measured.ts';
import { PAIR_CLASSES } from '../../../src/core/typist/parameters.ts';
import { STANDARD_SEATS } from '../../../src/core/typist/standard-seats.ts';
import { english } from './plain-board.ts';

const key = (code: string, downMs: number, upMs: number | null = downMs + 90): RecordedKey => ({
  code,
  downMs,
  upMs,
  char: null,
});

test.each([
  ['KeyE', 'KeyE', 'double letter'],
  ['KeyE', 'KeyD', 'same finger, another key'],
  ['KeyF', 'KeyT', 'same finger, another key'],
  ['KeyT', 'KeyH', 'other hand'],
  ['KeyD', 'KeyF', 'neighbouring fingers, same row'],
  ['KeyI', 'KeyL', 'neighbouring fingers, one row apart'],
  ['KeyC', 'KeyR', 'neighbouring fingers, two rows apart'],
  ['KeyA', 'KeyD', 'two fingers apart, same row'],
  ['KeyP', 'KeyJ', 'three fingers apart, one row apart'],
])('%s, then %s: %s', (one, other, name) => {
  const { intervals } = observed([key(one, 0), key(other, 120)], NO_SHARES);
  expect(intervals).toEqual([{ group: PAIR_CLASSES.map(String).indexOf(name), band: null, ms: 120 }]);
});

test('every finger has its home key, and no key two fingers', () => {
  const homes = [...STANDARD_SEATS].filter(([, seat]) => seat.home).map(([code]) => code);
  expect(homes.join(' ')).toBe('KeyA KeyS KeyD KeyF KeyJ KeyK KeyL Semicolon');
  expect(STANDARD_SEATS.size).toBe(5 * 4 + 6 * 3 + 5 + 1);
});

describe('what is measured in a run of presses', () => {
  test('the thumb has groups of its own, and twice the thumb says nothing', () => {
    const { intervals } = observed(
      [key('KeyT', 0), key('Space', 100), key('Space', 250), key('KeyA', 450)],
      NO_SHARES,
    );
    expect(intervals.map(({ group, ms }) => [group, ms])).toEqual([
      [TO_THUMB_GROUP, 100],
      [FROM_THUMB_GROUP, 200],
    ]);
  });

  test('a key that no text is typed with breaks it, and so does a pause', () => {
    const { intervals, dwells } = observed(
      [key('KeyT', 0), key('Backspace', 300), key('KeyR', 500), key('KeyO', 2500), key('KeyE', 2620)],
      NO_SHARES,
    );
    expect(intervals.map(({ ms }) => ms)).toEqual([120]);
    expect(dwells.length).toBe(4);
  });

  test('dwells go by finger; a key that never came up, or was rested on, has none', () => {
    const { dwells } = observed(
      [key('KeyF', 0, 90), key('KeyJ', 200, null), key('KeyA', 400, 1400)],
      NO_SHARES,
    );
    expect(dwells).toEqual([{ finger: 1, ms: 90 }]);
  });

  test('nothing of the order is left, and none of the keys', () => {
    const there = observed([key('KeyT', 0, 80), key('KeyO', 210, 260), key('KeyN', 310, 420)], NO_SHARES);
    const back = observed([key('KeyT', 0, 80), key('KeyO', 100, 150), key('KeyN', 310, 420)], NO_SHARES);
    expect(there.intervals.map(({ ms }) => ms)).toEqual([100, 210]);
    expect(back.intervals.map(({ ms }) => ms)).toEqual([100, 210]);
    expect(JSON.stringify(there)).not.toMatch(/Key|[A-Z]/);
  });

  test('how practised a pair is comes from a text: TH is, VF is not', () => {
    const shareOf = pairSharesOf(english);
    const typed = (one: string, other: string) =>
      observed(
        [
          { ...key(`Key${one.toUpperCase()}`, 0), char: one },
          { ...key(`Key${other.toUpperCase()}`, 99), char: other },
        ],
        shareOf,
      ).intervals[0]?.band;
    expect([typed('T', 'H'), typed('v', 'f')]).toEqual([3, 0]);
    // A handbook's English beside Norvig's 3.56 % for all of it (2012, Google Books).
    expect(shareOf('t', 'h')).toBeGreaterThan(0.025);
    expect(shareOf('t', 'h')).toBeLessThan(0.04);
  });
});

test('a chord is what its keys are apart, in whatever order they came', () => {
  expect(
    observedChord([
      { code: 'KeyK', downMs: 1020 },
      { code: 'KeyD', downMs: 1004 },
    ]),
  ).toEqual({ hands: 'two', onsetsMs: [0, 16] });
  expect(observedChord([{ code: 'KeyK', downMs: 3 }])).toBeNull();
});

test('a second measuring adds to the first and keeps the times sorted', () => {
  const one = {
    ...NOTHING_MEASURED,
    dwells: [
      { finger: 1, ms: 80 },
      { finger: 2, ms: 120 },
    ],
  };
  const two = { ...NOTHING_MEASURED, dwells: [{ finger: 3, ms: 100 }] };
  expect(addedTo(one, two).dwells.map(({ ms }) => ms)).toEqual([80, 100, 120]);
});

test.each([
  [[0, 16, 16, 32, 64], 16],
  [[0.1, 0.3, 12.7], 0.2],
  [[5], 0],
])('the clock of %j steps by %d ms', (times, step) => {
  expect(clockStepMs(times)).toBeCloseTo(step, 6);
});
