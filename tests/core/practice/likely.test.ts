import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { diagnosisWords } from '../../../src/core/practice/fault-words.ts';
import { diagnoseResults } from '../../../src/core/practice/likely.ts';
import { need, sample, stretchOf, way } from './sample.ts';

/** What is left of presses when only their results arrive. */
function likely(wanted: string, stream: string, oldKeys: readonly string[] = []) {
  return diagnoseResults({
    keymap: sample,
    host: usHost,
    need: need(wanted),
    way: way(wanted),
    given: stretchOf(stream).given.map(({ given }) => given),
    oldKeys,
  });
}

describe('from results alone, likely', () => {
  test.each([
    [
      'right key, wrong layer',
      '(',
      'L24↓0 L24↑80',
      [{ fault: 'wrong-layer', on: 'letters', needed: 'signs', rightKey: true }],
    ],
    [
      'the key of the other hand',
      'k',
      'L23↓0 L23↑80',
      [{ fault: 'mirrored-hand', key: 'L23', meant: 'R23' }],
    ],
    ['a key beside it', 'k', 'R24↓0 R24↑80', [{ fault: 'neighbour', key: 'R24', meant: 'R23' }]],
    [
      'a chord too slow: by how much does not arrive',
      '1',
      'L32↓0 L33↓71 L32↑120 L33↑140',
      [{ fault: 'chord-missed', chord: 'one', apartMs: null, windowMs: 45, broken: null }],
    ],
    [
      'a chord of three of which two came',
      '2',
      'R12↓0 R13↓20 R12↑120 R13↑140',
      [{ fault: 'chord-incomplete', chord: 'two', missing: ['R14'] }],
    ],
    [
      'a hold let go too early',
      '(',
      'RT2↓0 L24↓60 L24↑110 RT2↑150',
      [{ fault: 'tap-for-hold', key: 'RT2', heldMs: null, holdAfterMs: 200, rule: null }],
    ],
    ['a modifier that is missing', 'S', 'L24↓0 L24↑60', [{ fault: 'modifier-missing', modifier: 'Shift' }]],
    [
      'a neighbour with a modifier too many',
      'k',
      'L22↓0 R24↓250 R24↑300 L22↑320',
      [
        { fault: 'neighbour', key: 'R24', meant: 'R23' },
        { fault: 'modifier-extra', modifier: 'Shift' },
      ],
    ],
    [
      'two faults, one after the other',
      'k',
      'R24↓0 R24↑80 L23↓400 L23↑480',
      [
        { fault: 'neighbour', key: 'R24', meant: 'R23' },
        { fault: 'mirrored-hand', key: 'L23', meant: 'R23' },
      ],
    ],
  ])('%s', (_, wanted, stream, faults) => {
    expect(likely(wanted, stream)).toEqual({ sure: false, faults });
  });

  test('the old place', () => {
    expect(likely('k', 'L35↓0 L35↑80', ['L35']).faults).toEqual([
      { fault: 'old-place', key: 'L35', meant: 'R23' },
    ]);
  });

  test('what no place of the design gives', () => {
    const given = { code: 'KeyQ', modifiers: ['Meta'], char: null, waits: false, alone: false } as const;
    const diagnosis = diagnoseResults({
      keymap: { ...sample, layers: sample.layers.slice(1) },
      host: usHost,
      need: need('k'),
      way: way('k'),
      given: [given],
    });
    expect(diagnosis.faults).toEqual([{ fault: 'unknown' }]);
  });
});

test('the words say that it is only likely', () => {
  expect(diagnosisWords(sample, likely('(', 'L24↓0 L24↑80'))).toEqual([
    'Likely: right key, wrong layer: Letters instead of Signs.',
  ]);
});
