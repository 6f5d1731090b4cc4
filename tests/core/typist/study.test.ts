import { describe, expect, test } from 'vitest';
import { timingOf } from '../../../src/core/keymap/timing.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { estimateAccidents } from '../../../src/core/typist/accidents.ts';
import { studyChord } from '../../../src/core/typist/chord-study.ts';
import { studyHold } from '../../../src/core/typist/hold-study.ts';
import { overviewOf } from '../../../src/core/typist/overview.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { situationOf } from '../../../src/core/typist/situation.ts';
import { between, leastHarm } from '../../../src/core/typist/study.ts';
import { chordOver, englishOn, keyOf, plainKeymap } from './plain-board.ts';

const person = personAt(75);
const hold = { hold: { do: 'key', code: 'ControlLeft' }, holdBy: 'press-inside' } as const;
const keymap = plainKeymap({ A: hold, S: hold }, [
  chordOver('ER', 50),
  chordOver('WER', 60),
  chordOver('JK', 40),
]);
const runs = englishOn(keymap);
const situation = situationOf(runs, person);
const place = { key: keyOf.get('A') ?? '', layer: 'base' };

const estimate = (design: Keymap) => estimateAccidents(design, runs, person);

describe('the study of a chord', () => {
  test.each(keymap.chords?.map((chord) => [chord.id, chord] as const) ?? [])(
    '%s: at every window looked at, the estimate of the design with that window',
    (id, chord) => {
      const { points } = studyChord(situation, keymap, chord);
      for (const { ms, misfires, misses } of points.filter((_, at) => at % 9 === 0)) {
        const chords =
          keymap.chords?.map((each) => (each.id === id ? { ...each, windowMs: ms } : each)) ?? [];
        const own = estimate({ ...keymap, chords }).chords.find((each) => each.id === id);
        expect(misfires).toBeCloseTo(own?.misfiresPer1000Words ?? -1, 9);
        expect(misses).toBeCloseTo(own?.missesPer1000Uses ?? -1, 9);
      }
    },
  );

  test('one that is still being made is studied as if it were there', () => {
    const without = { ...keymap, chords: [] };
    const draft = { ...chordOver('ER', 50), id: '' };
    const { points } = studyChord(situationOf(englishOn(without), person), without, draft);
    const made = estimate({ ...keymap, chords: [chordOver('ER', 50)] }).chords[0];
    expect(between(points, 50)?.misfires).toBeCloseTo(made?.misfiresPer1000Words ?? -1, 9);
  });

  test('the damage is done by runs of its own letters, with how often these are typed', () => {
    const [chord] = keymap.chords ?? [];
    if (chord === undefined) throw new Error('There is no chord.');
    const { damage } = studyChord(situation, keymap, chord);
    const [worst] = damage;
    expect(worst?.things.map((thing) => thing.what === 'key' && thing.key)).toEqual([
      keyOf.get('E'),
      keyOf.get('R'),
    ]);
    // "er" makes up 2.05 % of English letter pairs (Norvig 2012): about 70 to 110 times in 1,000 words.
    expect(worst?.typedPer1000Words).toBeGreaterThan(60);
    expect(worst?.typedPer1000Words).toBeLessThan(120);
    expect(worst?.misfires).toBeLessThan(worst?.typedPer1000Words ?? 0);
  });

  test('of five keys nothing is suggested: only a simulation can say how often it misfires', () => {
    expect(studyChord(situation, keymap, chordOver('ASDFG', 50)).suggested).toBeNull();
  });
});

describe('the study of a hold', () => {
  const study = studyHold(situation, keymap, place);
  const withTiming = (timing: object): Keymap => {
    const [base] = keymap.layers;
    if (base === undefined) return keymap;
    const own = base.places[place.key];
    return {
      ...keymap,
      layers: [{ ...base, places: { ...base.places, [place.key]: { ...own, ...timing } } }],
    };
  };
  const ownHold = (design: Keymap) => estimate(design).holds.find(({ key }) => key === place.key);

  test('at every time looked at, and in every cell of the table, the estimate of the design with that timing', () => {
    expect(study?.table.length).toBe(15);
    for (const { ms, misfires, misses } of study?.points ?? []) {
      const own = ownHold(withTiming({ holdAfterMs: ms }));
      expect([misfires, misses]).toEqual([own?.misfiresPer1000Words, own?.missesPer1000Uses]);
    }
    for (const { timing, misfires, misses } of study?.table ?? []) {
      const own = ownHold(withTiming(timing));
      expect([misfires, misses]).toEqual([own?.misfiresPer1000Words, own?.missesPer1000Uses]);
    }
  });

  test('one cell is in force, and it is the design’s timing', () => {
    const inForce = study?.table.filter((cell) => cell.inForce) ?? [];
    expect(inForce.map(({ timing }) => timing)).toEqual([
      { holdBy: 'press-inside', quietBeforeMs: 0, againWithinMs: 0, sameHandTaps: false, tapIfAlone: false },
    ]);
    expect(timingOf(keymap, keymap.layers[0]?.places[place.key])).toMatchObject(inForce[0]?.timing ?? {});
  });

  test('a key without a hold has none', () => {
    expect(studyHold(situation, keymap, { key: keyOf.get('Q') ?? '', layer: 'base' })).toBeNull();
  });
});

describe('the choice that does least harm', () => {
  const points = [
    { ms: 20, misfires: 0, misses: 500 },
    { ms: 40, misfires: 1, misses: 100 },
    { ms: 60, misfires: 1.05, misses: 95 },
    { ms: 80, misfires: 9, misses: 0 },
  ];

  test.each([
    ['with 10 uses assumed the window in the middle: 1 + 1 against 5, 2 and 9', 0, 40, true],
    ['with 100 uses of the text’s own the long one: 9 against 11', 100, 80, false],
  ])('is %s', (_, uses, ms, assumed) => {
    expect(leastHarm(points, uses, 0)).toMatchObject({ point: { ms }, assumed });
  });

  test('is none under the shortest that is allowed, and of near equals the shortest', () => {
    expect(leastHarm(points, 0, 50)?.point.ms).toBe(60);
    expect(leastHarm(points, 0, 100)).toBeNull();
    expect(leastHarm(points, 0, 0)?.point.ms).toBe(40);
  });

  test('between two points lies what a straight line says, beyond the ends the nearest', () => {
    expect(between(points, 30)).toEqual({ ms: 30, misfires: 0.5, misses: 300 });
    expect(between(points, 5)).toMatchObject({ ms: 5, misses: 500 });
    expect(between(points, 500)).toMatchObject({ ms: 500, misfires: 9 });
    expect(between([], 5)).toBeNull();
  });
});

describe('the overview', () => {
  test('adds everything up and has the worst first', () => {
    const accidents = estimate(keymap);
    const { misfires, offences } = overviewOf(keymap, situation, accidents);
    const all = [...accidents.chords, ...accidents.holds].map((each) => each.misfiresPer1000Words ?? 0);
    expect(misfires).toBeCloseTo(
      all.reduce((sum, each) => sum + each, 0),
      9,
    );
    expect(offences.map((each) => each.misfires)).toEqual(all.toSorted((one, other) => other - one));
    expect(offences[0]?.offender).toEqual({ what: 'hold', ...place });
  });
});
