import { expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import type { Chord, Keymap } from '../../../src/core/keymap/types.ts';
import type { Accidents } from '../../../src/core/typist/accidents.ts';
import { accidentChanges, isWorse } from '../../../src/core/versions/accident-changes.ts';
import { A, chord, layer, small, toLayer } from '../keymap/small.ts';

type Rates = readonly [misfires: number | null, misses: number];

const designOf = (chords: Chord[]): Keymap =>
  small([layer('base', { k1: { tap: A, hold: toLayer('up') } }), layer('up')], chords);

/** Accidents of the first chord and of the hold on k1. */
function withRates(chords: Chord[], c1: Rates | null, k1: Rates) {
  const accidents: Accidents = {
    chords:
      c1 === null
        ? []
        : [
            {
              id: chords[0]?.id ?? '',
              misfiresPer1000Words: c1[0],
              missesPer1000Uses: c1[1],
              holdsPer1000Uses: null,
              causes: [],
            },
          ],
    holds: [
      { key: 'k1', layer: 'base', misfiresPer1000Words: k1[0] ?? 0, missesPer1000Uses: k1[1], causes: [] },
    ],
    delay: [],
  };
  return { told: { keymap: designOf(chords), host: usHost }, accidents };
}

const c1 = chord('c1', ['k2', 'k3']);

test.each<[string, Rates | null, Rates, Rates | null, Rates, string[]]>([
  ['nothing changes', [1, 20], [2, 30], [1, 20], [2, 30], []],
  ['worse and better', [1, 20], [2, 30], [3, 10], [2, 30], ['k2 misfires worse', 'k2 misses better']],
  [
    'the greatest difference first',
    [1, 20],
    [2, 30],
    [1.5, 20],
    [5, 30],
    ['k1 misfires worse', 'k2 misfires worse'],
  ],
  ['less than a tenth', [10, 200], [2, 30], [10.9, 219], [2, 30], []],
  ['not in the first decimal', [0.01, 20], [2, 30], [0.04, 20], [2, 30], []],
  ['a new chord: its misses were nobody’s', null, [2, 30], [3, 10], [2, 30], ['k2 misfires worse']],
  ['a chord that is gone', [3, 10], [2, 30], null, [2, 30], ['k2 misfires better']],
  ['a chord of which nothing is known', [null, 10], [2, 30], [3, 20], [2, 30], ['k2 misses worse']],
])('%s', (_, chordBefore, holdBefore, chordAfter, holdAfter, wanted) => {
  const changes = accidentChanges(
    withRates(chordBefore ? [c1] : [], chordBefore, holdBefore),
    withRates(chordAfter ? [c1] : [], chordAfter, holdAfter),
  );
  expect(changes.map((each) => `${each.keys[0]} ${each.rate} ${isWorse(each) ? 'worse' : 'better'}`)).toEqual(
    wanted,
  );
});

test('a chord of another id is the same one if it has the same keys', () => {
  const before = withRates([c1], [1, 20], [2, 30]);
  const after = withRates([chord('c9', ['k3', 'k2'])], [1, 20], [2, 30]);
  expect(accidentChanges(before, after)).toEqual([]);
});
