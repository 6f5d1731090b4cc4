import { describe, expect, test } from 'vitest';
import { usHost } from '../../../../../src/core/host/us.ts';
import type { Overview } from '../../../../../src/core/typist/overview.ts';
import type { Simulation } from '../../../../../src/core/typist/simulate.ts';
import { textOptions } from '../../../../../src/store/text-options.ts';
import {
  accidentRows,
  leftOutInWords,
  litByOffenders,
  protectionRows,
  protectionsInWords,
  totalInWords,
} from '../../../../../src/ui/desks/design/accidents/accident-rows.ts';
import {
  outsideInWords,
  simulatedTables,
  simulationInWords,
} from '../../../../../src/ui/desks/design/accidents/simulation-words.ts';
import {
  kindOfSpeed,
  speedOfKind,
  speedOptions,
} from '../../../../../src/ui/desks/design/accidents/typist-words.ts';
import { chordOver, keyOf, plainKeymap } from '../../../../core/typist/plain-keymap.ts';

const keymap = plainKeymap({ A: { hold: { do: 'key', code: 'ControlLeft' } } }, [
  chordOver('ER', 50),
  chordOver('JK', 40, { name: 'Escape' }),
]);
const source = { keymap, host: usHost };
const [A = '', E = '', R = ''] = ['A', 'E', 'R'].map((letter) => keyOf.get(letter));
const press = (key: string) => ({ what: 'key' as const, key, layer: 'base', asHold: false });
const overview: Overview = {
  misfires: 9.44,
  meanDelayMs: 12.4,
  delay: [{ key: A, layer: 'base', per1000Words: 300, meanMs: 92, p95Ms: 150 }],
  offences: [
    {
      offender: { what: 'hold', key: A, layer: 'base' },
      misfires: 8,
      misses: 300,
      holds: null,
      damage: [
        { things: [press(A), press(R)], typedPer1000Words: 30, misfires: 6 },
        { things: [press(A), press(E)], typedPer1000Words: 3, misfires: 0.1 },
      ],
    },
    { offender: { what: 'chord', chord: 'chord-ER' }, misfires: 1.4, misses: 12, holds: 52, damage: [] },
    { offender: { what: 'chord', chord: 'chord-JK' }, misfires: 0.04, misses: 12, holds: null, damage: [] },
  ],
};

describe('the list of what goes off', () => {
  const rows = accidentRows(overview, source);

  test('has names, figures with how sure they are, and what of the text does most of it', () => {
    expect(rows.map(({ name, figures, at }) => [name, figures, at])).toEqual([
      ['a to Left Control', 'about 8 (between 4 and 16); misses about 300 in 1,000', 'at “ar”'],
      [
        'chord Tab',
        'about 1.4 (between 0.7 and 2.8); misses about 12 in 1,000; comes as its hold about 52 in 1,000',
        '',
      ],
    ]);
  });

  test('has bars against the worst, and opens the card of each', () => {
    expect(rows.map(({ share }) => share)).toEqual([1, 0.175]);
    expect(rows.map(({ card }) => card)).toEqual([
      { card: 'key', key: A },
      { card: 'chord', chord: 'chord-ER' },
    ]);
  });

  test('lights up keys and chords together', () => {
    const lit = litByOffenders(
      overview.offences.map(({ offender }) => offender),
      'all',
      source,
    );
    expect(lit.keys).toEqual(expect.arrayContaining([A, E, R]));
    expect(lit.chords).toEqual(['chord-ER', 'chord-JK']);
  });

  test.each([
    [9.44, '9.4', 'misfires in 1,000 words, between 4.7 and 19'],
    [0.01, 'practically none', 'misfires in 1,000 words'],
  ])('in all %d', (misfires, figure, rest) => {
    const [said, words, wait] = totalInWords({ ...overview, misfires });
    expect([said, words]).toEqual([figure, rest]);
    expect(wait).toContain('12 ms');
  });

  test('what of the text is left out', () => {
    expect([0.0004, 0.004, 0.2].map((share) => leftOutInWords(share).split(' %')[0])).toEqual([
      'Under 0.1',
      '0.4',
      '20',
    ]);
  });
});

describe('protections in words', () => {
  const hold = (key: string) => ({
    key,
    layer: 'base',
    change: { holdBy: 'tap-inside', holdAfterMs: 250 } as const,
    misfiresBefore: 10,
    misfiresAfter: 0.5,
    missesBefore: 0,
    missesAfter: 323,
  });
  const found = { holds: [hold(A), hold(E)], changes: 4, before: 20, after: 1, enough: true, hurt: [] };

  test('keys with the same changes stand in one row', () => {
    expect(protectionRows(found, source)).toEqual([
      {
        name: 'Hold by a tap inside, hold after 250 ms',
        words: expect.stringMatching(/^left .+, left .+: misfires 20 → 1, misses 0 → 320 of 1,000$/),
      },
    ]);
  });

  test.each([
    [
      found,
      5,
      /^With 4 changes on 2 keys, hold\/tap letters misfire about 1 times .* instead of about 20\.$/,
    ],
    [{ ...found, before: 3 }, 5, /nothing need change/],
    [{ ...found, enough: false }, 0.1, /^Nothing reaches that/],
    [{ ...found, holds: [], changes: 0, enough: false, after: 20 }, 5, /^No change brings that/],
    [{ ...found, hurt: ['A', '€'] }, 5, /2 needs would then be clumsy or missing: A, €\.$/],
  ])('what they come to', (protections, most, words) => {
    expect(protectionsInWords(protections, most)).toMatch(words);
  });
});

describe('a simulation in words', () => {
  const rate = (value: number) => ({ rate: value, low: value * 0.9, high: value * 1.1 });
  const simulation: Simulation = {
    chords: [
      {
        id: 'chord-ER',
        misfiresPer1000Words: rate(1.4),
        missesPer1000Uses: rate(12),
        holdsPer1000Uses: rate(50),
      },
      { id: 'chord-JK', misfiresPer1000Words: rate(0), missesPer1000Uses: null, holdsPer1000Uses: null },
    ],
    holds: [{ key: A, layer: 'base', misfiresPer1000Words: rate(4), missesPer1000Uses: null }],
    delay: [{ key: A, layer: 'base', meanMs: 90, p95Ms: 150, meanLowMs: 85, meanHighMs: 95 }],
    words: 100_000,
    typists: 1000,
    seed: 7,
    stoppedBy: 'words',
  };
  const tables = simulatedTables(simulation, overview, source);
  const rows = tables[0]?.rows ?? [];

  test('stands beside the estimate, the worst first, and says which lies outside', () => {
    expect(
      rows.map(({ name, estimate, simulated, isOutside }) => [name, estimate, simulated, isOutside]),
    ).toEqual([
      ['a to Left Control', '8', '4 (3.6 to 4.4)', true],
      ['chord Tab', '1.4', '1.4 (1.3 to 1.5)', false],
    ]);
    expect(outsideInWords(tables.slice(0, 1))).toMatch(/^1 estimate lies outside/);
    expect(outsideInWords(tables.slice(1))).toMatch(/^All estimates lie within/);
    expect(outsideInWords([])).toBe('Nothing went off.');
  });

  test('has misses, chords that come as their hold, and waits, where they were looked at', () => {
    expect(tables.map(({ of, rows: all }) => [of, all.map(({ id }) => id)])).toEqual([
      ['misfires', [`hold base ${A}`, 'chord chord-ER']],
      ['misses', ['chord chord-ER']],
      ['holds', ['chord chord-ER']],
      ['delay', [`delay base ${A}`]],
    ]);
    const waits = tables.at(-1)?.rows.map(({ name, estimate, simulated }) => [name, estimate, simulated]);
    expect(waits).toEqual([['a', '92', '90 (85 to 95)']]);
  });

  test('says its words, typists and seed', () => {
    expect(simulationInWords(simulation)).toBe(
      '100,000 words by 1,000 typists, seed 7; intervals hold 95 %.',
    );
  });
});

describe('the typist in words', () => {
  test('speeds on offer; the measured one where there is one', () => {
    expect(speedOptions(false).map(({ label }) => label)).toContain('average, about 49 words a minute');
    expect(speedOptions(false).map(({ value }) => value)).not.toContain('measured');
    expect(speedOptions(true).map(({ value }) => value)).toContain('measured');
  });

  test.each(['slow', 'veryFast', 'measured', 82] as const)('speed %s is chosen and comes back', (speed) => {
    expect(speedOfKind(kindOfSpeed(speed), 82)).toBe(speed);
  });

  test('the own text only where there is one', () => {
    expect(textOptions(false, 'german').map(({ value }) => value)).not.toContain('own');
    expect(textOptions(true, 'german')[0]?.value).toBe('own');
  });

  test('a choice that goes with the design’s languages says which text that is', () => {
    const ofDesign = textOptions(false, 'code').find(({ value }) => value === 'design');
    expect(ofDesign?.label).toContain('program code');
  });
});
