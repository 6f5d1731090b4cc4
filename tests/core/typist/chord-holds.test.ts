import { describe, expect, test } from 'vitest';
import type { Chord } from '../../../src/core/keymap/types.ts';
import { estimateAccidents } from '../../../src/core/typist/accidents.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { simulate } from '../../../src/core/typist/simulate.ts';
import { chordOver, english, englishOn, plainKeymap } from './plain-board.ts';

const hold = { do: 'key', code: 'ControlLeft' } as const;
const chord = (over: string, more: Partial<Chord>) => chordOver(over, 90, { hold, ...more });

/** Keys that the text hardly has beside each other, so that only what is made on purpose counts. */
const chords: readonly Chord[] = [
  chord('QP', { holdAfterMs: 100 }),
  chord('ZM', { holdAfterMs: 140, release: 'last-up' }),
  chord('XN', { holdAfterMs: 160, holdBy: 'press-inside' }),
  chord('JW', { holdAfterMs: 160, holdBy: 'tap-inside', release: 'last-up' }),
  chord('KV', { holdAfterMs: 90, holdBy: 'press-inside', tapIfAlone: true }),
  chordOver('BY', 60),
];

describe('a chord that is meant as a tap and comes as its hold', () => {
  const keymap = plainKeymap({}, chords);
  const runs = englishOn(keymap);

  test.each([35, 80])('estimate and simulation agree at %d words a minute', (wpm) => {
    const person = personAt(wpm);
    const estimate = estimateAccidents(keymap, runs, person).chords;
    const simulated = simulate(keymap, runs, english, person, { words: 200, seed: 5, usesEach: 300 }).chords;
    const pairs = estimate.map(({ id, holdsPer1000Uses }, at) => ({
      id,
      estimate: holdsPer1000Uses,
      simulated: simulated[at]?.holdsPer1000Uses ?? null,
    }));
    expect(pairs.at(-1)).toMatchObject({ estimate: null, simulated: null });
    const wrong = pairs.slice(0, -1).filter(({ estimate: own, simulated: rate }) => {
      if (own === null || rate === null) return true;
      return own < rate.low / 1.25 - 10 || own > rate.high * 1.25 + 10;
    });
    expect(wrong).toEqual([]);
    // What is asked about does happen.
    expect(pairs.filter(({ simulated: rate }) => (rate?.rate ?? 0) > 100).length).toBeGreaterThan(2);
  });

  test('the longer it takes, the rarer; never without time, and nearly never after a second', () => {
    const share = (holdAfterMs: number) => {
      const own = plainKeymap({}, [chord('QP', { holdAfterMs })]);
      return estimateAccidents(own, runs, personAt(50)).chords[0]?.holdsPer1000Uses ?? -1;
    };
    const shares = [0, 80, 120, 160, 250, 1000].map(share);
    expect(shares).toEqual(shares.toSorted((one, other) => other - one));
    expect(shares[0]).toBeCloseTo(1000, 0);
    expect(shares.at(-1)).toBeLessThan(1);
  });
});
