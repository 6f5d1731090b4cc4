import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { play } from '../../../src/core/engine/play.ts';
import { producesExactly } from '../../../src/core/host/produces-exactly.ts';
import { usHost } from '../../../src/core/host/us.ts';
import { needText, parseNeed } from '../../../src/core/keymap/need.ts';
import { chordsOf } from '../../../src/core/keymap/timing.ts';
import type { Action, Binding, Chord, Keymap, ShiftedAction } from '../../../src/core/keymap/types.ts';
import { describeSteps } from '../../../src/core/routes/describe.ts';
import { findRoutes } from '../../../src/core/routes/find-routes.ts';
import { type GrownChoice, grownKeymapArbitrary } from '../arbitraries/grown-keymap.ts';
import { small } from '../keymap/small.ts';

const NEEDS = [
  ...['a', 'e', 'Q', 'A', '1', '!', ' ', ';', 'key:ArrowLeft', 'key:Enter', 'key:KeyA', 'key:ShiftLeft'],
  ...['key:ControlLeft', 'shortcut:Control+KeyA', 'shortcut:Control+Shift+KeyA', 'shortcut:Shift+Enter'],
].map(needOf);

function needOf(text: string) {
  const need = parseNeed(text);
  if (!need.ok) throw new Error(need.problem);
  return need.value;
}

const FAMILIES: readonly (readonly [string, GrownChoice])[] = [
  ['anything', {}],
  [
    'Shift often',
    { kinds: ['key', 'modifier', 'char'], maxLayers: 2, maxChords: 2, chars: ['a', ';', 'A', '!'] },
  ],
  ['many chords with holds', { kinds: ['key', 'layer', 'char'], maxKeys: 6, maxChords: 8, maxLayers: 3 }],
];

/** No duration, or one that hands can tell apart: routes are not made to fit into less than ten milliseconds. */
function isForHands(keymap: Keymap): boolean {
  const fits = (ms: number | undefined) => ms === undefined || ms === 0 || ms >= 10;
  const timings = [
    keymap.timing ?? {},
    ...keymap.layers.flatMap((layer) => Object.values(layer.places)),
    ...chordsOf(keymap),
  ];
  return (
    timings.every((one) => fits(one.holdAfterMs) && fits(one.quietBeforeMs) && fits(one.againWithinMs)) &&
    chordsOf(keymap).every((chord) => fits(chord.windowMs))
  );
}

/** The routes of a design, each played; the count of those by a result under Shift and by a chord's hold. */
function played(keymap: Keymap) {
  const count = { shifted: 0, chordHolds: 0 };
  for (const { need, route } of findRoutes(keymap, usHost, NEEDS)) {
    if (route === null) continue;
    const output = play(keymap, route.events, usHost);
    if (!output.ok) throw new Error(`${needText(need)}: ${output.problem.reason}`);
    const told = `${needText(need)} by ${JSON.stringify(route.events)} gives ${JSON.stringify(output.value.output)}`;
    expect(producesExactly(usHost, output.value.output, need), told).toBe(true);
    expect(route.events.filter(({ type }) => type === 'down').length).toBe(route.cost.presses);
    for (const step of route.steps) {
      if (step.move === 'release') continue;
      if (step.shifted) count.shifted += 1;
      if (step.chord !== undefined && step.side === 'hold') count.chordHolds += 1;
    }
  }
  return count;
}

test('every route of a design with the later fields, played by the engine, produces exactly its need', () => {
  const count = { shifted: 0, chordHolds: 0 };
  for (const [, choice] of FAMILIES) {
    fc.assert(
      fc.property(grownKeymapArbitrary(choice).filter(isForHands), (keymap) => {
        const found = played(keymap);
        count.shifted += found.shifted;
        count.chordHolds += found.chordHolds;
      }),
      { numRuns: 150 },
    );
  }
  expect(count.shifted).toBeGreaterThan(10);
  expect(count.chordHolds).toBeGreaterThan(10);
}, 60_000);

const shift: Binding = { tap: { do: 'key', code: 'ShiftLeft' } };
const char = (one: string): Action => ({ do: 'char', char: one });
const shifted = (tap: Action, onShift: ShiftedAction): Binding => ({ tap, onShift });
const onBase = (places: Record<string, Binding>, chords: Chord[] = [], timing = {}): Keymap => ({
  ...small(
    [
      { id: 'base', name: 'Base', places },
      { id: 'up', name: 'Up', places: { k5: { tap: char('1') } } },
    ],
    chords,
  ),
  timing,
});
const chord = (more: Partial<Chord>): Chord => ({
  id: 'c',
  keys: ['k1', 'k2'],
  windowMs: 45,
  action: char('x'),
  ...more,
});

describe('routes by the later fields', () => {
  test.each<[string, string, Keymap, readonly string[] | null]>([
    [
      'a result under Shift',
      ';',
      onBase({ k1: shift, k2: shifted(char(','), { do: 'char', char: ';' }) }),
      ['(Left Shift)', '(;)'],
    ],
    [
      'the tap itself cannot be had with Shift any more',
      '<',
      onBase({ k1: shift, k2: shifted(char(','), { do: 'char', char: ';' }) }),
      null,
    ],
    [
      'a result under Shift without one',
      ';',
      onBase({ k2: shifted(char(','), { do: 'char', char: ';' }) }),
      null,
    ],
    [
      'a latched Shift',
      '?',
      onBase({
        k1: { tap: { do: 'modifier', code: 'ShiftLeft', mode: 'latch' } },
        k2: shifted(char('.'), { do: 'char', char: '?' }),
      }),
      ['press', 'press'],
    ],
    ['a chord’s tap', 'x', onBase({}, [chord({ hold: char('y') })]), ['press']],
    ['a chord’s hold', 'y', onBase({}, [chord({ hold: char('y') })]), ['hold']],
    [
      'a chord’s hold that asks for company',
      'y',
      onBase({}, [chord({ hold: char('y'), tapIfAlone: true })]),
      null,
    ],
    [
      'a layer held by a chord',
      '1',
      onBase({}, [chord({ hold: { do: 'layer', layer: 'up', mode: 'while-held' } })]),
      ['hold', 'press'],
    ],
    [
      'a key that is a hold from the next press on',
      '1',
      onBase({ k1: { tap: char('a'), hold: { do: 'layer', layer: 'up', mode: 'while-held' } } }, [], {
        tapIfAlone: true,
      }),
      ['hold', 'press'],
    ],
    [
      'a hold that asks for company',
      'b',
      onBase({ k1: { tap: char('a'), hold: char('b') } }, [], { tapIfAlone: true }),
      null,
    ],
    ['repeat, which hangs on what came before', 'a', onBase({ k1: { tap: { do: 'repeat' } } }), null],
    [
      'Shift for one word, which stays on',
      'A',
      onBase({ k1: { tap: { do: 'word-shift' } }, k2: { tap: char('a') } }),
      null,
    ],
  ])('%s: %s', (_, text, keymap, steps) => {
    const route = findRoutes(keymap, usHost, [needOf(text)])[0]?.route ?? null;
    const words = route === null ? null : describeSteps(keymap, route);
    const found = words?.map((word, at) => {
      const part = steps?.[at] ?? '';
      return part !== '' && word.includes(part) ? part : word;
    });
    expect(found ?? null).toEqual(steps);
  });

  test('a shifted step in words says what comes', () => {
    const keymap = onBase({ k1: shift, k2: shifted(char(','), { do: 'char', char: ';' }) });
    const route = findRoutes(keymap, usHost, [needOf(';')])[0]?.route ?? null;
    expect(route === null ? [] : describeSteps(keymap, route).at(-1)).toMatch(/\(;\)$/);
  });
});
