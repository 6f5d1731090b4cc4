import { describe, expect, test } from 'vitest';
import { diagnosePresses } from '../../../src/core/practice/diagnose.ts';
import { diagnosisWords } from '../../../src/core/practice/fault-words.ts';
import { eventsIn, need, sample, stretchOf, way } from './sample.ts';

interface More {
  readonly next?: string;
  readonly oldKeys?: readonly string[];
}

function diagnosed(wanted: string, stream: string, { next, oldKeys }: More = {}) {
  return diagnosePresses({
    keymap: sample,
    need: need(wanted),
    way: way(wanted),
    stretch: stretchOf(stream),
    ...(next === undefined ? {} : { next: need(next) }),
    ...(oldKeys === undefined ? {} : { oldKeys }),
  });
}

const faultsOf = (wanted: string, stream: string, more?: More) => diagnosed(wanted, stream, more).faults;

describe('each fault by itself, with its numbers', () => {
  test.each([
    [
      'right key, wrong layer',
      '(',
      'L24↓0 L24↑80',
      [{ fault: 'wrong-layer', on: 'letters', needed: 'signs', rightKey: true }],
    ],
    [
      'a layer that is still on',
      's',
      'RT2↓0 L24↓250 L24↑300 RT2↑320',
      [{ fault: 'wrong-layer', on: 'signs', needed: 'letters', rightKey: true }],
    ],
    [
      'the other layer',
      '(',
      'LT2↓0 L24↓250 L24↑300 LT2↑320',
      [{ fault: 'wrong-layer', on: 'letters', needed: 'signs', rightKey: true }],
    ],
    [
      'the key of the other hand',
      'k',
      'L23↓0 L23↑80',
      [{ fault: 'mirrored-hand', key: 'L23', meant: 'R23' }],
    ],
    ['a key beside it', 'k', 'R24↓0 R24↑80', [{ fault: 'neighbour', key: 'R24', meant: 'R23' }]],
    ['the key above', 'k', 'R13↓0 R13↑80', [{ fault: 'neighbour', key: 'R13', meant: 'R23' }]],
    ['any other key', 'k', 'L35↓0 L35↑80', [{ fault: 'other-key', key: 'L35', meant: 'R23' }]],
    [
      'a chord too slow',
      '1',
      'L32↓0 L33↓71 L32↑120 L33↑140',
      [{ fault: 'chord-missed', chord: 'one', apartMs: 71, windowMs: 45, broken: null }],
    ],
    [
      'a chord of three of which two came',
      '2',
      'R12↓0 R13↓20 R12↑120 R13↑140',
      [{ fault: 'chord-incomplete', chord: 'two', missing: ['R14'] }],
    ],
    [
      'a chord with a key let go too early',
      '1',
      'L32↓0 L32↑20 L33↓30 L33↑90',
      [{ fault: 'chord-missed', chord: 'one', apartMs: 30, windowMs: 45, broken: 'too-short' }],
    ],
    [
      'a chord with another key between',
      '1',
      'L32↓0 R21↓10 L33↓20 L32↑90 R21↑95 L33↑99',
      [
        { fault: 'chord-missed', chord: 'one', apartMs: 20, windowMs: 45, broken: 'other-key' },
        { fault: 'other-key', key: 'R21', meant: 'L32' },
      ],
    ],
    [
      'a chord that was not meant',
      'v',
      'L32↓0 L33↓31 L32↑80 L33↑90',
      [{ fault: 'chord-by-mistake', chord: 'one', apartMs: 31, windowMs: 45 }],
    ],
    [
      'a hold let go too early',
      '(',
      'RT2↓0 L24↓60 L24↑110 RT2↑150',
      [{ fault: 'tap-for-hold', key: 'RT2', heldMs: 150, holdAfterMs: 200, rule: 'S3' }],
    ],
    [
      'a tap held too long',
      'f',
      'L22↓0 L22↑260',
      [{ fault: 'hold-for-tap', key: 'L22', heldMs: 260, holdAfterMs: 200, rule: 'S8' }],
    ],
    ['a modifier that is missing', 'S', 'L24↓0 L24↑60', [{ fault: 'modifier-missing', modifier: 'Shift' }]],
    [
      'a modifier too many',
      's',
      'L22↓0 L24↓250 L24↑300 L22↑320',
      [{ fault: 'modifier-extra', modifier: 'Shift' }],
    ],
    [
      'a key that falls through to the layer below',
      'key:Home',
      'LT2↓0 R25↓250 R25↑300 LT2↑320',
      [{ fault: 'other-key', key: 'R25', meant: 'R11' }],
    ],
    [
      'a key without a binding',
      'k',
      'R35↓0 R35↑50',
      [
        { fault: 'other-key', key: 'R35', meant: 'R23' },
        { fault: 'nothing-there', key: 'R35' },
      ],
    ],
  ])('%s', (_, wanted, stream, faults) => {
    expect(diagnosed(wanted, stream)).toEqual({ sure: true, faults });
  });

  test('where the need was before the design changed', () => {
    const old = { oldKeys: ['L35'] };
    expect(faultsOf('k', 'L35↓0 L35↑80', old)).toEqual([{ fault: 'old-place', key: 'L35', meant: 'R23' }]);
  });

  test('what comes next came first', () => {
    expect(faultsOf('k', 'L24↓0 L24↑80', { next: 's' })).toEqual([{ fault: 'came-early' }]);
  });
});

describe('mixed faults do not hide each other', () => {
  test('the other hand, and the wrong layer', () => {
    expect(faultsOf('(', 'R24↓0 R24↑80')).toEqual([
      { fault: 'mirrored-hand', key: 'R24', meant: 'L24' },
      { fault: 'wrong-layer', on: 'letters', needed: 'signs', rightKey: false },
    ]);
  });

  test('a neighbour with a modifier too many', () => {
    expect(faultsOf('k', 'L22↓0 R24↓250 R24↑300 L22↑320')).toEqual([
      { fault: 'neighbour', key: 'R24', meant: 'R23' },
      { fault: 'modifier-extra', modifier: 'Shift' },
    ]);
  });

  test('one wrong press after the other', () => {
    expect(faultsOf('k', 'R24↓0 R24↑80 L23↓400 L23↑480')).toEqual([
      { fault: 'neighbour', key: 'R24', meant: 'R23' },
      { fault: 'mirrored-hand', key: 'L23', meant: 'R23' },
    ]);
  });

  test('a slow chord and another key', () => {
    expect(faultsOf('1', 'L32↓0 L33↓71 L32↑120 L33↑140 R22↓300 R22↑350').map(({ fault }) => fault)).toEqual([
      'chord-missed',
      'other-key',
    ]);
  });
});

test('what is pressed right is no fault', () => {
  for (const [wanted, stream] of [
    ['(', 'RT2↓0 L24↓250 L24↑300 RT2↑320'],
    ['1', 'L32↓0 L33↓31 L32↑80 L33↑90'],
    ['f', 'L22↓0 L22↑90'],
  ] as const)
    expect(faultsOf(wanted, stream)).toEqual([{ fault: 'unknown' }]);
});

test('in words', () => {
  const words = (wanted: string, stream: string) => diagnosisWords(sample, diagnosed(wanted, stream));
  expect(words('1', 'L32↓0 L33↓71 L32↑120 L33↑140')).toEqual(['Chord One missed: 71 ms apart, window 45.']);
  expect(words('(', 'L24↓0 L24↑80')).toEqual(['Right key, wrong layer: Letters instead of Signs.']);
  expect(words('k', 'L23↓0 L23↑80')).toEqual([
    'Mirrored hand: left middle home instead of right middle home.',
  ]);
  expect(eventsIn('L24↓0')).toHaveLength(1);
});
