import { describe, expect, test } from 'vitest';
import { compileKeymap } from '../../../src/core/engine/compile.ts';
import { createEngine } from '../../../src/core/engine/engine.ts';
import { play } from '../../../src/core/engine/play.ts';
import type { OutputEvent } from '../../../src/core/engine/types.ts';
import { MODIFIERS } from '../../../src/core/keymap/codes.ts';
import { both, chord, design, held, key, latchCode } from './design.ts';
import { eventsIn, playerOf, tracerOf, written } from './notation.ts';
import { tinyHost } from './tiny-host.ts';

const plain = design({ base: { A: key('A'), S: key('S') } });
const homeRow = design({ base: { F: both(key('F'), key('ShiftLeft')), J: key('J') } });

describe('I1 a stream that cannot be played is refused as a whole', () => {
  test.each([
    ['a down of a key that is down', 'A↓0 S↓5 A↓9', 2],
    ['an up of a key that is up', 'A↓0 A↑5 A↑9', 2],
    ['an up of a key that was never down', 'A↑0', 0],
    ['a key that is not on the board', 'A↓0 Z↓1', 1],
    ['a time that decreases', 'A↓5 S↓4.75', 1],
    ['a time that is no number', 'A↓0 S↓soon', 1],
    ['an infinite time', 'A↓0 A↑Infinity', 1],
  ])('I1 %s', (_, stream, index) => {
    const result = play(plain, eventsIn(stream), tinyHost);
    expect(result).toMatchObject({ ok: false, problem: { index } });
  });

  test('I1 an unknown type', () => {
    const events = [...eventsIn('A↓0'), JSON.parse('{"t":1,"key":"A","type":"press"}')];
    expect(play(plain, events, tinyHost)).toMatchObject({ ok: false, problem: { index: 1 } });
  });

  test('I1 the reason names the event in words', () => {
    const result = play(plain, eventsIn('A↓0 A↓9'), tinyHost);
    expect(result.ok ? '' : result.problem.reason).toContain('"A" goes down at 9');
  });

  test.each(['A↓0 A↑0', 'A↓-7.5 A↑0', ''])('I1 equal, negative and no times are fine: "%s"', (stream) => {
    expect(play(plain, eventsIn(stream), tinyHost).ok).toBe(true);
  });
});

test('I1 an incremental feed refuses a bad event, says why, and goes on as if it had not come', () => {
  const output: OutputEvent[] = [];
  const engine = createEngine(compileKeymap(plain, tinyHost), {
    output: (t, type, code) => output.push({ t, type, code }),
  });
  const answers = eventsIn('A↓10 A↓11 Z↓12 S↓9 S↑13 A↑14').map((event) => engine.feed(event));
  expect(answers.map((answer) => answer === undefined)).toEqual([true, false, false, false, false, true]);
  expect(written(output)).toBe('A↓10 A↑14');
});

test('I2 the output names W3C codes in order, the trace says what was decided', () => {
  expect(play(homeRow, eventsIn('J↓0 J↑9'), tinyHost)).toMatchObject({
    ok: true,
    value: {
      output: [
        { t: 0, type: 'press', code: 'KeyJ' },
        { t: 9, type: 'release', code: 'KeyJ' },
      ],
      trace: [{ t: 0, what: 'tap', key: 'J', rule: 'S9' }],
    },
  });
});

test('I2 each entry of the trace has its rule and its reason', () => {
  expect(tracerOf(homeRow)('F↓0 J↓50 F↑250 J↑300')).toEqual(['S9 open F@0', 'S8 hold F@200', 'S9 tap J@200']);
  const result = play(homeRow, eventsIn('F↓0 F↑250'), tinyHost);
  expect(result.ok && result.value.trace.map((entry) => entry.why)).toEqual([
    'tap or hold: hold after 200 ms, at 200',
    'down for more than 200 ms',
  ]);
});

test('I3 what a timer brings about carries the time at which it was due', () => {
  expect(playerOf(homeRow)('F↓0.5 F↑900')).toBe('ShiftLeft↓200.5 ShiftLeft↑900');
});

test('I3 what waited is emitted when it is decided, not when it was pressed', () => {
  expect(playerOf(homeRow)('F↓0 J↓20 J↑40 F↑120')).toBe('F↓120 J↓120 J↑120 F↑120');
});

describe('I4 timers and events', () => {
  const play = playerOf(homeRow);
  test('I4 a key released exactly at its threshold is a tap', () => {
    expect(play('F↓0 F↑200')).toBe('F↓200 F↑200');
  });
  test('I4 a quarter of a millisecond later it is a hold', () => {
    expect(play('F↓0 F↑200.25')).toBe('ShiftLeft↓200 ShiftLeft↑200.25');
  });
  test('I4 an event at the very time of the timer comes first: it waits for the hold', () => {
    expect(play('F↓0 J↓200 J↑210 F↑220')).toBe('ShiftLeft↓200 J↓200 J↑210 ShiftLeft↑220');
  });
  test('I4 after the last event pending timers run out', () => {
    expect(play('F↓0')).toBe('ShiftLeft↓200');
    expect(playerOf(design({ base: { A: key('A') }, chords: [chord('AS', 45, key('B'))] }))('A↓3')).toBe(
      'A↓48',
    );
  });
  test('I4 after the last event several timers run out in order of their time', () => {
    const two = design({
      base: { A: both(key('A'), key('AltLeft')), S: both(key('S'), key('ShiftLeft')) },
      timing: { holdAfterMs: 100 },
    });
    expect(playerOf(two)('A↓0 S↓60')).toBe('AltLeft↓100 ShiftLeft↓160');
  });
});

test('I5 the comparison is of the sum against the time, in doubles', () => {
  // 0.1 + 0.2 is 0.30000000000000004: a release at exactly that sum is still a tap, at 0.3 all the more.
  const quick = design({ base: { F: both(key('F'), key('ShiftLeft'), { holdAfterMs: 0.2 }) } });
  expect(playerOf(quick)('F↓0.1 F↑0.30000000000000004')).toBe('F↓0.30000000000000004 F↑0.30000000000000004');
  expect(playerOf(quick)('F↓0.1 F↑0.3000000000000001')).toBe(
    'ShiftLeft↓0.30000000000000004 ShiftLeft↑0.3000000000000001',
  );
});

test.each(MODIFIERS)('I6 %s is a modifier: its action does not type, so it uses no latch', (code) => {
  const other = code === 'ShiftLeft' ? 'ShiftRight' : 'ShiftLeft';
  const play = playerOf(design({ base: { 1: latchCode(other), A: key(code), S: key('S') } }));
  expect(play('1↓0 1↑1 A↓2 A↑3 S↓4 S↑5')).toBe(`${other}↓0 ${code}↓2 ${code}↑3 S↓4 S↑5 ${other}↑5`);
});

test('I6 other codes that sound like modifiers type', () => {
  const play = playerOf(design({ base: { 1: latchCode('ShiftLeft'), A: key('CapsLock'), S: key('Fn') } }));
  expect(play('1↓0 1↑1 A↓2 A↑3')).toBe('ShiftLeft↓0 CapsLock↓2 CapsLock↑3 ShiftLeft↑3');
  expect(play('1↓0 1↑1 S↓2 S↑3')).toBe('ShiftLeft↓0 Fn↓2 Fn↑3 ShiftLeft↑3');
});

test('the layers that are on can be asked for, lowest first', () => {
  const keymap = design({ base: { 1: held('high'), 2: held('low') }, layers: { low: {}, high: {} } });
  const engine = createEngine(compileKeymap(keymap, tinyHost), { output: () => undefined });
  expect(engine.layersOn()).toEqual(['base']);
  for (const event of eventsIn('1↓0 2↓1')) engine.feed(event);
  expect(engine.layersOn()).toEqual(['base', 'low', 'high']);
  for (const event of eventsIn('1↑2')) engine.feed(event);
  expect(engine.layersOn()).toEqual(['base', 'low']);
});
