import { describe, expect, test } from 'vitest';
import { both, chord, design, held, key, latch, lock, nothing } from './design.ts';
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

describe('S9 a down while nothing is open', () => {
  test('S9 with one action only it is pressed at once, tap or hold', () => {
    const one = design({ base: { A: key('A'), S: { hold: key('ShiftLeft') } } });
    expect(playerOf(one)('A↓0 S↓1 A↑500 S↑501')).toBe('A↓0 ShiftLeft↓1 A↑500 ShiftLeft↑501');
  });
  test('S9 without a binding nothing happens, and the trace says so', () => {
    expect(playerOf(timed)('G↓0 G↑10')).toBe('');
    expect(tracerOf(timed)('G↓0 G↑10')).toEqual(['S9 no-binding G@0']);
  });
});

describe('S10 quiet before', () => {
  const quiet = by('time-only', { quietBeforeMs: 100 });
  test('S10 the first press ever may be a hold', () => {
    expect(playerOf(quiet)('F↓0 F↑300')).toBe('ShiftLeft↓200 ShiftLeft↑300');
  });
  test('S10 less than the quiet after a press: a tap at once; exactly the quiet: open', () => {
    expect(tracerOf(quiet, 'tap', 'open')('J↓0 J↑10 F↓99.75 F↑110')).toEqual([
      'S9 tap J@0',
      'S10 tap F@99.75',
    ]);
    expect(tracerOf(quiet, 'tap', 'open')('J↓0 J↑10 F↓100 F↑400')).toEqual(['S9 tap J@0', 'S9 open F@100']);
  });
  test('S10 an unbound key counts', () => {
    expect(tracerOf(quiet, 'tap')('G↓0 G↑10 F↓50 F↑60')).toEqual(['S10 tap F@50']);
  });
  test('S10 the key itself counts', () => {
    expect(tracerOf(quiet, 'tap')('F↓0 F↑10 F↓50 F↑400')).toEqual(['S3 tap F@10', 'S10 tap F@50']);
  });
  test('S10 a release does not count', () => {
    expect(tracerOf(quiet, 'open')('J↓0 J↑190 F↓200 F↑210')).toEqual(['S9 open F@200']);
  });
  test('S10 a down that is queued in between counts with its physical time', () => {
    // D is queued behind F at 150 and taken at 210; what counts is 210 − 60 = the down of J at 150.
    const keymap = design({
      base: {
        ...base,
        F: both(key('F'), key('ShiftLeft')),
        D: both(key('D'), key('ControlLeft'), { quietBeforeMs: 60 }),
      },
    });
    expect(tracerOf(keymap, 'open', 'tap')('F↓0 J↓100 D↓150 F↑190 J↑191 D↑195')).toEqual([
      'S9 open F@0',
      'S3 tap F@190',
      'S9 tap J@190',
      'S10 tap D@190',
    ]);
    expect(tracerOf(keymap, 'open', 'tap')('F↓0 J↓90 D↓150 F↑190 J↑191 D↑195')).toEqual([
      'S9 open F@0',
      'S3 tap F@190',
      'S9 tap J@190',
      'S9 open D@190',
      'S3 tap D@195',
    ]);
  });
  test('S10 only the down right before counts: a later one does not reach back', () => {
    // J goes down after F in stage 2's order, while F is queued behind D.
    const keymap = design({
      base: { ...base, F: both(key('F'), key('ShiftLeft'), { quietBeforeMs: 60 }) },
    });
    expect(tracerOf(keymap, 'open', 'tap', 'hold')('D↓0 F↓60 J↓70 D↑100 F↑120 J↑130')).toEqual([
      'S9 open D@0',
      'S3 tap D@100',
      'S9 open F@100',
      'S3 tap F@120',
      'S9 tap J@120',
    ]);
  });
  test('S10 a firing counts with the time of its first key', () => {
    const keymap = design({
      base: { ...base, F: both(key('F'), key('ShiftLeft'), { quietBeforeMs: 60 }) },
      chords: [chord('JK', 50, key('Tab'))],
    });
    // The chord's keys go down at 0 and 40; 60 ms after 0 is far enough, though only 20 after 40.
    expect(tracerOf(keymap, 'open')('J↓0 K↓40 F↓60 J↑61 K↑62 F↑63')).toEqual(['S9 open F@60']);
    expect(tracerOf(keymap, 'open')('J↓0 K↓40 F↓59.75 J↑61 K↑62 F↑63')).toEqual([]);
  });
  test('S10 a tap at once does not hold up what follows', () => {
    expect(playerOf(quiet)('J↓0 J↑10 F↓50 K↓60 K↑70 F↑400')).toBe('J↓0 J↑10 F↓50 K↓60 K↑70 F↑400');
  });
});

describe('S11 again within', () => {
  const again = by('time-only', { againWithinMs: 100 });
  test('S11 within the time after its own tap: a tap at once, so a key can repeat', () => {
    expect(playerOf(again)('F↓0 F↑50 F↓150 F↑900')).toBe('F↓50 F↑50 F↓150 F↑900');
    expect(tracerOf(again, 'tap')('F↓0 F↑50 F↓150 F↑900')).toEqual(['S3 tap F@50', 'S11 tap F@150']);
  });
  test('S11 a quarter of a ms later it may be a hold', () => {
    expect(playerOf(again)('F↓0 F↑50 F↓150.25 F↑900')).toBe('F↓50 F↑50 ShiftLeft↓350.25 ShiftLeft↑900');
  });
  test('S11 counts from the physical release, though the release was emitted later', () => {
    const keymap = design({
      base: { ...base, F: both(key('F'), key('ShiftLeft'), { againWithinMs: 100 }) },
      chords: [chord('JK', 50, key('Tab'))],
    });
    // F comes up at 60 behind a waiting J, which is flushed at 100: 160 is the last moment, not 200.
    expect(tracerOf(keymap, 'tap')('F↓0 J↓50 F↑60 F↓160 F↑900 J↑901')).toContain('S11 tap F@160');
    expect(tracerOf(keymap, 'tap')('F↓0 J↓50 F↑60 F↓160.25 F↑900 J↑901')).toEqual([
      'S3 tap F@100',
      'S9 tap J@100',
    ]);
  });
  test('S11 a tap at once renews the time', () => {
    expect(playerOf(again)('F↓0 F↑50 F↓140 F↑200 F↓290 F↑900')).toBe('F↓50 F↑50 F↓140 F↑200 F↓290 F↑900');
  });
  test('S11 a hold in between changes nothing', () => {
    const quick = by('time-only', { againWithinMs: 500, holdAfterMs: 20 });
    // A tap released at 10; then the hold below needs a way round S11, so it comes from another layer's binding.
    const keymap = design({
      base: {
        F: both(key('F'), key('ShiftLeft'), { againWithinMs: 500, holdAfterMs: 20 }),
        1: held('up'),
      },
      layers: { up: { F: both(key('1'), key('AltLeft'), { holdAfterMs: 20 }) } },
    });
    expect(playerOf(keymap)('F↓0 F↑10 1↓20 F↓30 F↑100 1↑110 F↓510 F↑900')).toBe(
      'F↓10 F↑10 AltLeft↓50 AltLeft↑100 F↓510 F↑900',
    );
    expect(playerOf(keymap)('F↓0 F↑10 1↓20 F↓30 F↑100 1↑110 F↓510.25 F↑900')).toBe(
      'F↓10 F↑10 AltLeft↓50 AltLeft↑100 ShiftLeft↓530.25 ShiftLeft↑900',
    );
    expect(playerOf(quick)('F↓0 F↑30 F↓40 F↑50')).toBe('ShiftLeft↓20 ShiftLeft↑30 F↓50 F↑50');
  });
  test('S11 a tap on any layer counts, a press of a binding with one action does not', () => {
    const keymap = design({
      base: { F: both(key('F'), key('ShiftLeft'), { againWithinMs: 100 }), 1: held('up'), 2: held('one') },
      layers: { up: { F: both(key('1'), key('AltLeft')) }, one: { F: key('2') } },
    });
    expect(tracerOf(keymap, 'tap', 'open')('1↓0 F↓10 F↑20 1↑30 F↓60 F↑70')).toContain('S11 tap F@60');
    expect(tracerOf(keymap, 'open')('2↓0 F↓10 F↑20 2↑30 F↓60 F↑70')).toEqual(['S9 open F@60']);
  });
  test('S11 another key’s tap does not count', () => {
    expect(tracerOf(again, 'open')('D↓0 D↑10 F↓20 F↑30')).toEqual(['S9 open D@0', 'S9 open F@20']);
  });
});

describe('S12 the binding of a key', () => {
  const keymap = design({
    base: { A: key('A'), S: key('S'), 1: held('low'), 2: held('high') },
    layers: { low: { A: key('1') }, high: { A: key('2'), S: nothing } },
  });
  test('S12 from the highest layer that is on down to the base', () => {
    const play = playerOf(keymap);
    expect(play('1↓0 A↓1 A↑2 S↓3 S↑4 1↑5')).toBe('1↓1 1↑2 S↓3 S↑4');
    expect(play('2↓0 1↓0 A↓1 A↑2 1↑5 2↑6')).toBe('2↓1 2↑2');
  });
  test('S12 a blank stops the fall-through', () => {
    expect(playerOf(keymap)('2↓0 S↓3 S↑4 2↑5')).toBe('');
  });
  test('S12 looked up when the item is taken, not when the key went down', () => {
    const waits = design({ base, layers, timing: { holdBy: 'tap-inside' } });
    expect(playerOf(waits)('1↓0 J↓10 J↑20 1↑30')).toBe('1↓20 1↑20');
    expect(playerOf(waits)('1↓0 J↓10 1↑20 J↑30')).toBe('Space↓20 J↓20 Space↑20 J↑30');
  });
  test('S12 a firing has its chord’s action on every layer', () => {
    const chords = [chord('AS', 50, key('Tab'))];
    const withChord = design({
      base: { 1: held('low') },
      layers: { low: { A: key('1'), S: nothing } },
      chords,
    });
    expect(playerOf(withChord)('1↓0 A↓5 S↓6 A↑7 S↑8 1↑9')).toBe('Tab↓6 Tab↑7');
  });
});

describe('S13 what is released is what was pressed', () => {
  test('S13 a layer that went off in between changes nothing', () => {
    const keymap = design({ base: { A: key('A'), 1: held('up') }, layers: { up: { A: key('1') } } });
    expect(playerOf(keymap)('1↓0 A↓1 1↑2 A↑3')).toBe('1↓1 1↑3');
  });
  test('S13 a layer that came on in between neither', () => {
    const keymap = design({ base: { A: key('A'), S: lock('up') }, layers: { up: { A: nothing } } });
    expect(playerOf(keymap)('A↓0 S↓1 S↑2 A↑3')).toBe('A↓0 A↑3');
  });
  test('S13 a key that pressed nothing releases nothing', () => {
    const keymap = design({ base: { 1: latch('up') }, layers: { up: { A: key('1') } } });
    expect(playerOf(keymap)('A↓0 1↓1 1↑2 A↑3 A↓4 A↑5')).toBe('1↓4 1↑5');
  });
});
