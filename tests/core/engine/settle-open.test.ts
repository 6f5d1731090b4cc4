import { describe, expect, test } from 'vitest';
import { both, chord, design, held, key } from './design.ts';
import { playerOf, tracerOf } from './notation.ts';

const base = {
  F: both(key('F'), key('ShiftLeft')),
  D: both(key('D'), key('ControlLeft')),
  A: key('A'),
  J: key('J'),
  K: key('K'),
  1: both(key('Space'), held('up')),
};
const layers = { up: { J: key('1') } };
const by = (holdBy: 'time-only' | 'press-inside' | 'tap-inside', more = {}) =>
  design({ base, layers, timing: { holdBy, ...more } });
const timed = by('time-only');
const pressInside = by('press-inside');
const tapInside = by('tap-inside');
const sameHand = by('press-inside', { sameHandTaps: true });

describe('S1 the work list and the timer', () => {
  const keymap = design({
    base: { ...base, F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 100, holdBy: 'press-inside' }) },
    chords: [chord('JK', 50, key('Tab'))],
  });
  test('S1 before an item that is later than the timer, the timer', () => {
    // F is due at 100, but J waits from 90 to 140: J at 90 comes first and makes F a hold by S5.
    expect(tracerOf(keymap, 'hold')('F↓0 J↓90 J↑180 F↑200')).toEqual(['S5 hold F@140']);
    // At 100 J is still in time, though it is passed on at 150; at 100.25 the timer was there before it.
    expect(tracerOf(keymap, 'hold')('F↓0 J↓100 J↑180 F↑200')).toEqual(['S5 hold F@150']);
    expect(tracerOf(keymap, 'hold')('F↓0 J↓100.25 J↑180 F↑200')).toEqual(['S8 hold F@100']);
  });
  test('S1 the timer in its place between two items of one batch', () => {
    const waits = design({
      base: { ...base, F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 100 }) },
      chords: [chord('JK', 50, key('Tab'))],
    });
    // J waits 90 to 140 with the up of F behind it: at 100 it is a tap still, at 100.25 the hold was due before it.
    expect(tracerOf(waits, 'tap', 'hold')('F↓0 J↓90 F↑100 J↑200')).toEqual(['S3 tap F@140', 'S9 tap J@140']);
    expect(tracerOf(waits, 'tap', 'hold')('F↓0 J↓90 F↑100.25 J↑200')).toEqual([
      'S8 hold F@140',
      'S9 tap J@140',
    ]);
  });
  test('S1 when the list is empty the timer that is due before now, not at now', () => {
    const waits = design({
      base: { ...base, F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 100 }) },
      chords: [chord('FJ', 60, key('Tab'))],
    });
    expect(tracerOf(waits, 'open', 'tap', 'hold')('F↓0 F↑300')).toEqual(['S9 open F@60', 'S8 hold F@100']);
    const quick = design({
      base: { ...base, F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 60 }) },
      chords: [chord('FJ', 60, key('Tab'))],
    });
    // Due at 60, flushed at 60: the up at 60 was there first (I4), so this is a tap; a moment later it is a hold.
    expect(playerOf(quick)('F↓0 F↑60')).toBe('F↓60 F↑60');
    expect(playerOf(quick)('F↓0 F↑60.25')).toBe('ShiftLeft↓60 ShiftLeft↑60.25');
  });
  test('S1 and so on until none is due: several keys that were put off', () => {
    const waits = design({
      base: {
        A: both(key('A'), key('AltLeft'), { holdAfterMs: 20 }),
        F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 20 }),
        J: key('J'),
      },
      chords: [chord('AFJ', 90, key('Tab'))],
    });
    expect(playerOf(waits)('A↓0 F↓10 A↑300 F↑300')).toBe('AltLeft↓90 ShiftLeft↓90 AltLeft↑300 ShiftLeft↑300');
  });
});

describe('S2 settled: the action, then its queue in front of what is left', () => {
  test('S2 the queue is played after the action, in its order', () => {
    expect(playerOf(timed)('F↓0 J↓10 K↓20 J↑30 K↑40 F↑50')).toBe('F↓50 J↓50 K↓50 J↑50 K↑50 F↑50');
  });
  test('S2 a queued key may become open in its turn, and its own queue follows', () => {
    expect(tracerOf(timed)('F↓0 D↓10 J↓20 F↑30 D↑40 J↑50')).toEqual([
      'S9 open F@0',
      'S3 tap F@30',
      'S9 open D@30',
      'S3 tap D@40',
      'S9 tap J@40',
    ]);
    expect(playerOf(timed)('F↓0 D↓10 J↓20 F↑30 D↑40 J↑50')).toBe('F↓30 D↓40 J↓40 F↑40 D↑40 J↑50');
  });
  test('S2 what was queued stays in front of the items that follow in one batch', () => {
    const keymap = design({
      base: {
        ...base,
        F: both(key('F'), key('ShiftLeft'), { holdBy: 'press-inside' }),
        K: key('K'),
        L: key('L'),
      },
      chords: [chord('KLJ', 50, key('Tab'))],
    });
    expect(playerOf(keymap)('F↓0 A↓0.5 K↓10 L↓20 K↑30 L↑40 A↑41 F↑42')).toBe(
      'ShiftLeft↓0.5 A↓0.5 K↓30 L↓30 K↑30 L↑40 A↑41 ShiftLeft↑42',
    );
    expect(playerOf(keymap)('F↓0 K↓10 L↓20 K↑30 L↑40 F↑42')).toBe(
      'ShiftLeft↓30 K↓30 L↓30 K↑30 L↑40 ShiftLeft↑42',
    );
  });
});

describe('S3 the open key comes up', () => {
  test('S3 tap, whatever is queued', () => {
    expect(playerOf(timed)('F↓0 F↑80')).toBe('F↓80 F↑80');
    expect(tracerOf(tapInside, 'tap')('F↓0 J↓10 F↑20 J↑30')).toEqual(['S3 tap F@20', 'S9 tap J@20']);
  });
  test('S3 another up leaves it open', () => {
    expect(playerOf(timed)('J↓0 F↓10 J↑20 F↑90')).toBe('J↓0 F↓90 J↑90 F↑90');
  });
});

describe('S4 a key of the same hand', () => {
  test('S4 taps at once, before press-inside could make a hold', () => {
    expect(tracerOf(sameHand, 'tap', 'hold')('F↓0 A↓10 A↑20 F↑30')).toEqual(['S4 tap F@10', 'S9 tap A@10']);
    expect(playerOf(sameHand)('F↓0 A↓10 A↑20 F↑30')).toBe('F↓10 A↓10 A↑20 F↑30');
  });
  test('S4 a key of the other hand does not', () => {
    expect(tracerOf(sameHand, 'tap', 'hold')('F↓0 J↓10 J↑20 F↑30')).toEqual(['S5 hold F@10', 'S9 tap J@10']);
  });
  test('S4 a thumb key of the same hand does not, neither as the other nor as the open one', () => {
    expect(tracerOf(sameHand, 'hold')('F↓0 1↓10 1↑20 F↑30')).toEqual(['S5 hold F@10']);
    expect(tracerOf(sameHand, 'hold')('1↓0 A↓10 A↑20 1↑30')).toEqual(['S5 hold 1@10']);
  });
  test('S4 two thumb keys of one hand do not', () => {
    expect(tracerOf(sameHand, 'hold')('1↓0 2↓10 2↑20 1↑30')).toEqual(['S5 hold 1@10']);
  });
  test('S4 a firing is no key of a hand', () => {
    const keymap = design({
      base,
      layers,
      chords: [chord('AS', 50, key('Tab'))],
      timing: { holdBy: 'press-inside', sameHandTaps: true },
    });
    expect(tracerOf(keymap, 'hold')('F↓0 A↓10 S↓20 A↑30 S↑31 F↑40')).toEqual(['S5 hold F@20']);
  });
  test('S4 holds with every way of holding, and only where it is set', () => {
    const timeOnly = by('time-only', { sameHandTaps: true });
    expect(tracerOf(timeOnly, 'tap')('F↓0 A↓10 A↑20 F↑30')).toEqual(['S4 tap F@10', 'S9 tap A@10']);
    expect(tracerOf(pressInside, 'tap', 'hold')('F↓0 A↓10 A↑20 F↑30')).toEqual([
      'S5 hold F@10',
      'S9 tap A@10',
    ]);
  });
  test('S4 an unbound key of the same hand counts', () => {
    expect(playerOf(sameHand)('F↓0 G↓10 G↑20 F↑30')).toBe('F↓10 F↑30');
  });
});

describe('S5 press-inside', () => {
  test('S5 the next down makes it a hold, at once', () => {
    expect(playerOf(pressInside)('F↓0 J↓10 J↑20 F↑30')).toBe('ShiftLeft↓10 J↓10 J↑20 ShiftLeft↑30');
  });
  test('S5 a firing is a down as well', () => {
    const keymap = design({
      base,
      chords: [chord('JK', 50, key('Tab'))],
      timing: { holdBy: 'press-inside' },
    });
    expect(playerOf(keymap)('F↓0 J↓10 K↓30 J↑40 K↑41 F↑50')).toBe('ShiftLeft↓30 Tab↓30 Tab↑40 ShiftLeft↑50');
  });
  test('S5 an up alone does not', () => {
    expect(playerOf(pressInside)('J↓0 F↓10 J↑20 F↑30')).toBe('J↓0 F↓30 J↑30 F↑30');
  });
  test('S5 a down exactly at the threshold comes before the timer', () => {
    expect(tracerOf(pressInside, 'hold')('F↓0 J↓200 J↑210 F↑220')).toEqual(['S5 hold F@200']);
    expect(tracerOf(pressInside, 'hold')('F↓0 J↓200.25 J↑210 F↑220')).toEqual(['S8 hold F@200']);
  });
});

describe('S6 tap-inside', () => {
  test('S6 a key pressed and released inside makes it a hold at that release', () => {
    expect(playerOf(tapInside)('F↓0 J↓10 J↑20 F↑30')).toBe('ShiftLeft↓20 J↓20 J↑20 ShiftLeft↑30');
  });
  test('S6 a key that was down before does not', () => {
    expect(playerOf(tapInside)('J↓0 F↓10 J↑20 F↑30')).toBe('J↓0 F↓30 J↑30 F↑30');
  });
  test('S6 rolling over to the next key is a tap', () => {
    expect(playerOf(tapInside)('F↓0 J↓10 F↑20 J↑30')).toBe('F↓20 J↓20 F↑20 J↑30');
  });
  test('S6 the down must be in this queue, not in that of the key open before', () => {
    // J goes down while F is open, F is a tap, D opens next and J comes up while D is open: J's down is in D's queue
    // only if it came after D's.
    expect(tracerOf(tapInside, 'tap', 'hold')('F↓0 D↓10 J↓20 F↑30 J↑40 D↑50')).toEqual([
      'S3 tap F@30',
      'S6 hold D@40',
      'S9 tap J@40',
    ]);
    expect(tracerOf(tapInside, 'tap', 'hold')('F↓0 J↓10 D↓20 F↑30 J↑40 D↑50')).toEqual([
      'S3 tap F@30',
      'S9 tap J@30',
      'S3 tap D@50',
    ]);
  });
  test('S6 a firing pressed and released inside counts', () => {
    const keymap = design({ base, chords: [chord('JK', 50, key('Tab'))], timing: { holdBy: 'tap-inside' } });
    expect(playerOf(keymap)('F↓0 J↓10 K↓30 J↑40 K↑41 F↑50')).toBe('ShiftLeft↓40 Tab↓40 Tab↑40 ShiftLeft↑50');
  });
  test('S6 an unbound key pressed and released inside counts', () => {
    expect(playerOf(tapInside)('F↓0 G↓10 G↑20 F↑30')).toBe('ShiftLeft↓20 ShiftLeft↑30');
  });
});

test('S7 time-only: presses and taps inside settle nothing', () => {
  expect(playerOf(timed)('F↓0 J↓10 J↑20 F↑30')).toBe('F↓30 J↓30 J↑30 F↑30');
  expect(playerOf(timed)('F↓0 J↓10 J↑20 F↑300')).toBe('ShiftLeft↓200 J↓200 J↑200 ShiftLeft↑300');
});

describe('S8 the timer of the open key', () => {
  test('S8 counts from the physical down, not from the moment it became open', () => {
    expect(tracerOf(timed, 'open', 'hold')('F↓0 D↓50 F↑150 D↑400')).toEqual([
      'S9 open F@0',
      'S9 open D@150',
      'S8 hold D@250',
    ]);
  });
  test('S8 a key that was due while it was queued is a hold as soon as it is open', () => {
    expect(tracerOf(timed, 'open', 'tap', 'hold')('D↓0 F↓100 D↑150 F↑310')).toEqual([
      'S9 open D@0',
      'S3 tap D@150',
      'S9 open F@150',
      'S8 hold F@300',
    ]);
    const slow = design({
      base: {
        D: both(key('D'), key('ControlLeft'), { holdAfterMs: 500 }),
        F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 100 }),
      },
    });
    expect(playerOf(slow)('D↓0 F↓100 D↑300 F↑310')).toBe('D↓300 ShiftLeft↓300 D↑300 ShiftLeft↑310');
  });
  test('S8 is put off while something waits in stage 1', () => {
    const keymap = design({ base, chords: [chord('JK', 50, key('Tab'))] });
    expect(playerOf(keymap)('F↓0 J↓180 F↑300 J↑310')).toBe('ShiftLeft↓230 J↓230 ShiftLeft↑300 J↑310');
    // Tap or hold depends on physical times alone: F came up at 190, though that is known at 230 only.
    expect(playerOf(keymap)('F↓0 J↓180 F↑190 J↑310')).toBe('F↓230 J↓230 F↑230 J↑310');
  });
  test('S8 a binding of 0 ms is a hold unless it comes up in the same instant', () => {
    const zero = design({ base: { F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 0 }) } });
    expect(playerOf(zero)('F↓7 F↑7')).toBe('F↓7 F↑7');
    expect(playerOf(zero)('F↓7 F↑7.25')).toBe('ShiftLeft↓7 ShiftLeft↑7.25');
  });
  test('S8 the binding says for itself after how long, otherwise the keymap', () => {
    const own = design({
      base: { F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 80 }), D: both(key('D'), key('AltLeft')) },
      timing: { holdAfterMs: 120 },
    });
    expect(playerOf(own)('F↓0 F↑500 D↓1000 D↑1500')).toBe(
      'ShiftLeft↓80 ShiftLeft↑500 AltLeft↓1120 AltLeft↑1500',
    );
  });
});
