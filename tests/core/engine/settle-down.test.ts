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
const by = (holdBy: 'time-only' | 'tap-inside', more = {}) =>
  design({ base, layers, timing: { holdBy, ...more } });
const timed = by('time-only');

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
