import { test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { play } from '../../../src/core/engine/play.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { Recorder, rehearse } from '../../../src/core/rehearse/recorder.ts';
import type { Run } from '../../../src/core/rehearse/run.ts';
import { plainText, shownText } from '../../../src/core/rehearse/shown-text.ts';
import { stateAt } from '../../../src/core/rehearse/state-at.ts';
import { playableArbitrary } from '../arbitraries/stream-arbitrary.ts';
import { played, sample } from './played.ts';

const bars = ({ presses }: Run) =>
  presses.map(({ key, down, up, result, decidedAt }) => `${key} ${down}–${up} ${result}@${decidedAt}`);
const text = (run: Run) => plainText(shownText(run.items).tokens);

describe('a run', () => {
  test.each([
    ['a tap that acts at once', 'A↓0 A↑80', ['A 0–80 tap@0'], 'a'],
    ['a tap that is settled at its release', 'F↓0 F↑80', ['F 0–80 tap@80'], 'f'],
    ['a hold', 'F↓0 A↓250 A↑300 F↑320', ['F 0–320 hold@200', 'A 250–300 tap@250'], 'A'],
    ['a chord', 'R↓0 T↓45 R↑80 T↑90', ['R 0–80 chord@45', 'T 45–90 chord@45'], '\t'],
    ['a chord missed', 'R↓0 T↓46 R↑80 T↑90', ['R 0–80 tap@45', 'T 46–90 tap@90'], 'rt'],
    ['a key without a binding', '4↓0 4↑50', ['4 0–50 nothing@0'], ''],
    ['a key that stays down', 'A↓0', ['A 0–null tap@0'], 'a'],
  ])('%s', (_, stream, expected, out) => {
    const run = played(stream);
    expect(bars(run)).toEqual(expected);
    expect(text(run)).toBe(out);
  });

  test('a key that was pressed again before its first press was settled keeps them apart', () => {
    const run = played('F↓0 A↓10 F↑20 F↓30 F↑260 A↑270');
    expect(bars(run)).toEqual(['F 0–20 tap@20', 'A 10–270 tap@20', 'F 30–260 hold@230']);
  });

  test('Backspace takes back what was typed before it', () => {
    const { tokens, takenBack } = shownText(played('A↓0 A↑50 S↓100 S↑150 3↓200 3↑250').items);
    expect([plainText(tokens), plainText(takenBack)]).toEqual(['a', 's']);
  });

  test('each thing that came out names the decision that gave it', () => {
    const run = played('R↓0 T↓10 R↑80 T↑90 A↓200 A↑250');
    const causes = run.items.map(({ cause }) => run.decisions[cause]).map((each) => each?.chord ?? each?.key);
    expect(causes).toEqual(['rt', 'A']);
  });

  test('a refused event changes nothing', () => {
    const recorder = new Recorder(sample, usHost);
    expect(recorder.feed({ t: 10, key: 'A', type: 'down' })).toBeUndefined();
    expect(recorder.feed({ t: 20, key: 'A', type: 'down' })).toMatch(/down already/);
    expect(recorder.feed({ t: 20, key: 'none', type: 'down' })).toMatch(/no key "none"/);
    expect(recorder.feed({ t: 5, key: 'A', type: 'up' })).toMatch(/before 10/);
    expect(recorder.feed({ t: 90, key: 'A', type: 'up' })).toBeUndefined();
    expect(bars(recorder)).toEqual(['A 10–90 tap@10']);
  });

  test('a stream that cannot be played is refused with the place of the event', () => {
    const run = rehearse(sample, usHost, [
      { t: 0, key: 'A', type: 'down' },
      { t: 1, key: 'Z9', type: 'down' },
    ]);
    expect(run).toMatchObject({ ok: false, problem: { index: 1 } });
  });

  test.prop([playableArbitrary()], { numRuns: 60 })(
    'gives the output and the trace that the engine gives, and every press an end',
    ({ keymap, events }) => {
      const run = rehearse(keymap, usHost, events);
      const alone = play(keymap, events, usHost);
      if (!run.ok || !alone.ok) throw new Error('a stream was refused');
      expect(run.value.outputs.map(({ cause: _, ...output }) => output)).toEqual(alone.value.output);
      expect(run.value.decisions.map(({ presses: _, ...entry }) => entry)).toEqual(alone.value.trace);
      const downs = events.filter(({ type }) => type === 'down').length;
      expect(run.value.presses).toHaveLength(downs);
      expect(run.value.presses.filter(({ result }) => result === 'undecided')).toEqual([]);
    },
  );
});

describe('the state at a moment', () => {
  const run = played('2↓0 J↓100 J↑150 2↑200 F↓300 A↓600 A↑650 F↑700 R↓800 R↑900');
  test.each([
    [-1, { layersOn: ['base'], keysDown: [], modifiersOn: [], open: null, waits: null }],
    [0, { layersOn: ['base', 'digits'], keysDown: ['2'], modifiersOn: [], open: null, waits: null }],
    [120, { layersOn: ['base', 'digits'], keysDown: ['2', 'J'] }],
    [200, { layersOn: ['base'], keysDown: [] }],
    [400, { open: { key: 'F' }, keysDown: ['F'], modifiersOn: [] }],
    [610, { open: null, keysDown: ['F', 'A'], modifiersOn: ['ShiftLeft'] }],
    [810, { waits: { keys: ['R'], chords: ['rt'] } }],
    [850, { waits: null, keysDown: ['R'] }],
  ])('at %d ms', (t, expected) => {
    expect(stateAt(run, t)).toMatchObject(expected);
  });
});
