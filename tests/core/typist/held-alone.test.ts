import { expect, test } from 'vitest';
import type { Binding } from '../../../src/core/keymap/types.ts';
import { estimateAccidents } from '../../../src/core/typist/accidents.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { simulate } from '../../../src/core/typist/simulate.ts';
import { english, englishOn, plainKeymap } from './plain-board.ts';

const control = { do: 'key', code: 'ControlLeft' } as const;

/** Letters that are a tap when held alone (rule S14), each by another way of telling. */
const HOLDS: Readonly<Record<string, Partial<Binding>>> = {
  A: { holdBy: 'time-only', holdAfterMs: 130 },
  S: { holdBy: 'tap-inside', holdAfterMs: 130 },
  E: { holdBy: 'press-inside', holdAfterMs: 130 },
  N: { holdBy: 'time-only', holdAfterMs: 130, sameHandTaps: true },
};

function designOf(tapIfAlone: boolean) {
  const entries = Object.entries(HOLDS).map(([key, timing]): [string, Partial<Binding>] => [
    key,
    { hold: control, ...timing, tapIfAlone },
  ]);
  const keymap = plainKeymap(Object.fromEntries(entries));
  const runs = englishOn(keymap);
  return { keymap, runs, estimate: estimateAccidents(keymap, runs, personAt(60)) };
}

test('S14 closed form and simulation agree on keys that are a tap when held alone', () => {
  const { keymap, runs, estimate } = designOf(true);
  const result = simulate(keymap, runs, english, personAt(60), { words: 15_000, seed: 7, usesEach: 50 });
  const wrong = result.holds.flatMap(({ key, misfiresPer1000Words: { low, high } }, at) => {
    const own = estimate.holds[at]?.misfiresPer1000Words ?? -1;
    return own < low / 1.25 - 0.3 || own > high * 1.25 + 0.3 ? [{ key, own, low, high }] : [];
  });
  expect(wrong).toEqual([]);
});

test('S14 it saves misfires, however a hold is told', () => {
  const rates = (tapIfAlone: boolean) =>
    designOf(tapIfAlone).estimate.holds.map(({ misfiresPer1000Words }) => misfiresPer1000Words);
  const [without, saved] = [rates(false), rates(true)];
  for (const [at, before] of without.entries()) expect(saved[at]).toBeLessThan(before);
});
