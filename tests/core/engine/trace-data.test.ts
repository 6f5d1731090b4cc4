import { describe, expect, test } from 'vitest';
import { play } from '../../../src/core/engine/play.ts';
import type { TraceEntry } from '../../../src/core/engine/types.ts';
import { both, chord, design, key } from './design.ts';
import { eventsIn } from './notation.ts';
import { tinyHost } from './tiny-host.ts';

const letters = { D: { tap: key('D') }, F: { tap: key('F') }, S: { tap: key('S') }, J: { tap: key('J') } };
const chords = [chord('DFS', 45, key('1'), { quietBeforeMs: 0 })];

/** The data of those entries of the trace. */
function dataOf(keymap: ReturnType<typeof design>, what: TraceEntry['what'], stream: string) {
  const played = play(keymap, eventsIn(stream), tinyHost);
  if (!played.ok) throw new Error(played.problem.reason);
  return played.value.trace
    .filter((entry) => entry.what === what)
    .map(({ rule, data }) => ({ rule, ...data }));
}

describe('the trace says what its reasons are about', () => {
  const keymap = design({ base: letters, chords });

  test('keys that wait: since when, until when, for what', () => {
    expect(dataOf(keymap, 'waiting', 'D↓10 F↓30 D↑40 F↑50')).toEqual([
      { rule: 'G1', since: 10, until: 55, keys: ['D'], chords: ['dfs'] },
      { rule: 'G2', since: 10, until: 55, keys: ['D', 'F'], chords: ['dfs'] },
    ]);
  });

  test.each([
    ['the window ends', 'D↓0 F↓30 S↓46 D↑90 F↑91 S↑92', { rule: 'G6' }],
    ['a key comes up', 'D↓0 F↓30 D↑40 F↑50', { rule: 'G4', by: 'D' }],
    ['another key comes', 'D↓0 F↓30 J↓40 D↑50 F↑60 J↑70', { rule: 'G2', by: 'J' }],
  ])('keys that waited in vain: %s', (_, stream, expected) => {
    const [first] = dataOf(keymap, 'no-chord', stream);
    expect(first).toEqual({ ...expected, since: 0, keys: ['D', 'F'], chords: ['dfs'] });
  });

  test('a chord: its first down and its spread', () => {
    expect(dataOf(keymap, 'chord', 'D↓5 F↓20 S↓50 D↑60 F↑61 S↑62')).toEqual([
      { rule: 'G3', since: 5, apartMs: 45 },
    ]);
  });

  test('a hold/tap key: its down, and whose item decided', () => {
    const home = design({
      base: { F: both(key('F'), key('ShiftLeft'), { holdBy: 'press-inside' }), J: { tap: key('J') } },
    });
    expect(dataOf(home, 'open', 'F↓7 F↑20')).toEqual([{ rule: 'S9', since: 7, until: 207 }]);
    expect(dataOf(home, 'hold', 'F↓7 J↓90 J↑95 F↑99')).toEqual([{ rule: 'S5', since: 7, by: 'J' }]);
    expect(dataOf(home, 'hold', 'F↓7 F↑290')).toEqual([{ rule: 'S8', since: 7 }]);
  });
});
