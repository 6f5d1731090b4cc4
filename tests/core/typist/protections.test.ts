import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { applyEdit } from '../../../src/core/keymap/apply-edit.ts';
import type { Binding } from '../../../src/core/keymap/types.ts';
import { estimateAccidents, type HoldPlace, holdPlaces } from '../../../src/core/typist/accidents.ts';
import { changes, holdOptions } from '../../../src/core/typist/hold-options.ts';
import { personAt } from '../../../src/core/typist/person.ts';
import { protectionEdit, suggestProtections } from '../../../src/core/typist/protections.ts';
import { situationOf } from '../../../src/core/typist/situation.ts';
import { englishOn, plainKeymap } from './plain-board.ts';

const person = personAt(75);
const hold = { hold: { do: 'key', code: 'ControlLeft' } } as const;

function designOf(timings: Readonly<Record<string, Partial<Binding>>>) {
  const keymap = plainKeymap(
    Object.fromEntries(Object.entries(timings).map(([letter, timing]) => [letter, { ...hold, ...timing }])),
  );
  const runs = englishOn(keymap);
  const places = holdPlaces(keymap);
  return { keymap, runs, situation: situationOf(runs, person), places };
}

const anything = { mostMisses: 1000, fixed: [] };
const each = (places: readonly HoldPlace[]) => places.map((place) => [place]);

describe('protections', () => {
  test('none where the rate is kept already', () => {
    const { situation, places } = designOf({ A: {} });
    expect(suggestProtections(situation, each(places), { ...anything, most: 1000 })).toMatchObject({
      holds: [],
      changes: 0,
      enough: true,
    });
  });

  const timing: fc.Arbitrary<Partial<Binding>> = fc.record({
    holdBy: fc.constantFrom('time-only', 'press-inside', 'tap-inside'),
    holdAfterMs: fc.constantFrom(150, 200, 260),
    sameHandTaps: fc.boolean(),
  });

  property.prop([timing, timing, fc.constantFrom(0.01, 0.5, 3, 20, 80)], { numRuns: 12, seed: 7 })(
    'are the fewest: no other choice for two keys reaches the rate with fewer changes, and what is promised comes',
    (a, l, most) => {
      const { keymap, runs, situation, places } = designOf({ A: a, L: l });
      const found = suggestProtections(situation, each(places), { ...anything, most });
      const [one = [], other = []] = places.map((place) => holdOptions(situation, place));
      const reaching = one.flatMap((left) =>
        other.flatMap((right) =>
          left.misfires + right.misfires <= most ? [changes(left) + changes(right)] : [],
        ),
      );
      expect(found.enough).toBe(reaching.length > 0);
      if (found.enough) expect(found.changes).toBe(Math.min(...reaching));
      const outcome = applyEdit(keymap, protectionEdit(found));
      const after = estimateAccidents(outcome.ok ? outcome.value.keymap : keymap, runs, person);
      expect(
        after.holds.reduce((sum, { misfiresPer1000Words }) => sum + misfiresPer1000Words, 0),
      ).toBeCloseTo(found.after, 9);
    },
  );

  test('leave out what would miss more than is allowed, and what must stay as it is', () => {
    const { situation, places } = designOf({ A: { holdBy: 'press-inside' }, S: { holdBy: 'press-inside' } });
    const wish = { ...anything, most: 4 };
    for (const { missesAfter } of suggestProtections(situation, each(places), { ...wish, mostMisses: 400 })
      .holds)
      expect(missesAfter).toBeLessThanOrEqual(400);
    const { holds } = suggestProtections(situation, each(places), { ...wish, fixed: ['holdBy'] });
    expect(holds.length).toBeGreaterThan(0);
    expect(holds.every(({ change }) => change.holdBy === undefined)).toBe(true);
  });

  test('give the keys of a group the same timing', () => {
    const { situation, places } = designOf({ F: { holdBy: 'press-inside' }, J: { holdBy: 'press-inside' } });
    const { holds } = suggestProtections(situation, [places], { ...anything, most: 1 });
    expect(holds.length).toBe(2);
    expect(holds[0]?.change).toEqual(holds[1]?.change);
  });
});
