import { describe, expect, test } from 'vitest';
import { estimateAccidents } from '../../../src/core/typist/accidents.ts';
import { personOfGroup } from '../../../src/core/typist/person.ts';
import { chordOver, englishOn, plainKeymap } from './plain-board.ts';
import { REPLAYS, type Replay } from './replayed.ts';

function estimateOf({ letters, ms, holdBy, group }: Replay): number {
  const keymap =
    holdBy === null
      ? plainKeymap({}, [chordOver(letters, ms)])
      : plainKeymap({ [letters]: { hold: { do: 'key', code: 'ControlLeft' }, holdAfterMs: ms, holdBy } });
  const { chords, holds } = estimateAccidents(keymap, englishOn(keymap), personOfGroup(group));
  return chords[0]?.misfiresPer1000Words ?? holds[0]?.misfiresPer1000Words ?? Number.NaN;
}

const checks = REPLAYS.map((replay) => ({ ...replay, estimate: estimateOf(replay) }));
const named = ({ group, letters, ms, holdBy }: Replay) => `${group} ${letters} ${ms} ms ${holdBy ?? ''}`;

// The model's parameters and these values come from one sample: that they agree shows that the arithmetic is right, and
// is no independent validation.
describe('closed form beside what happened when the sample was replayed', () => {
  const often = checks.filter(({ hits }) => hits >= 30);
  const factors = often.map((check) => {
    const ratio = check.estimate / check.per1000Words;
    return { what: named(check), factor: Math.max(ratio, 1 / ratio) };
  });

  test('of the checks with 30 hits and more, half are off by a factor of 1.4 or less', () => {
    const sorted = factors.map(({ factor }) => factor).toSorted((one, other) => one - other);
    expect(sorted.length).toBe(90);
    expect(sorted[sorted.length >> 1]).toBeLessThanOrEqual(1.4);
  });

  test('and none by more than 2.2', () => {
    expect(factors.filter(({ factor }) => !(factor <= 2.2))).toEqual([]);
  });

  test('where nothing happened the estimate is no notable number', () => {
    const never = checks.filter(({ hits }) => hits === 0);
    expect(never.length).toBeGreaterThan(20);
    expect(never.filter(({ estimate }) => !(estimate < 0.25)).map(named)).toEqual([]);
  });

  test('three keys of the home row within 60 ms: practically none (common practice, no source)', () => {
    const rates = checks.filter(({ letters, ms }) => letters === 'SDF' && ms === 60);
    expect(rates.length).toBe(4);
    for (const { estimate } of rates) expect(estimate).toBeLessThan(1 / 300);
  });
});
