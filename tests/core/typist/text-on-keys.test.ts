import { fc, test as property } from '@fast-check/vitest';
import { randomLcg } from 'd3-random';
import { describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { countOfRun, createRunCounter, type RunCounts } from '../../../src/core/needs/counts-runs.ts';
import { pressRunsOf } from '../../../src/core/typist/press-runs.ts';
import { textSource } from '../../../src/core/typist/sample-text.ts';
import { chordOver, english, englishOn, keyOf, plainKeymap } from './plain-board.ts';

function countsOf(text: string): RunCounts {
  const counter = createRunCounter();
  counter.add(text);
  return counter.counts();
}

describe('a text on the keys of a design', () => {
  const keymap = plainKeymap({}, [{ ...chordOver('JK', 40), action: { do: 'char', char: '1' } }]);

  /** Runs as texts: keys by their letters, `_` Space, `^` a held Shift, `(…)` a chord. */
  function runsOf(text: string, length: number): Record<string, number> {
    const { runs, presses, compiled } = pressRunsOf(keymap, usHost, countsOf(text));
    const letters = new Map([...keyOf].map(([letter, key]) => [key, letter.toLowerCase()]));
    const nameOf = (number: number) => {
      const press = presses[number];
      const names = (press?.keys ?? []).map((key) => letters.get(compiled.keyIds[key] ?? '') ?? '_').join('');
      return press?.held === true ? '^' : names.length > 1 ? `(${names})` : names;
    };
    const total = [...text].length;
    return Object.fromEntries(
      (runs[length - 1] ?? []).map((run) => [
        run.presses.map(nameOf).join(''),
        (run.per1000Words * total) / 5000,
      ]),
    );
  }

  test('letters are keys', () => {
    expect(runsOf('abab', 2)).toEqual({ ab: 2, ba: 1 });
    expect(runsOf('abab', 4)).toEqual({ abab: 1 });
  });

  test('a capital is a press more, and a chord one press', () => {
    expect(runsOf('aBa', 2)).toEqual({ 'a^': 1, '^b': 1, ba: 1 });
    expect(runsOf('a1 b', 3)).toEqual({ 'a(jk)_': 1, '(jk)_b': 1 });
  });

  test('what cannot be typed ends a run and is owned to', () => {
    expect(runsOf('abłab', 2)).toEqual({ ab: 2 });
    expect(pressRunsOf(keymap, usHost, countsOf('abłab')).untypable).toBeCloseTo(0.2, 9);
  });

  property.prop([fc.string({ unit: fc.constantFrom(...'abcAB .'), minLength: 1, maxLength: 60 })])(
    'presses are counted once each, pairs once each but the last',
    (text) => {
      const { runs, pressesOf } = pressRunsOf(keymap, usHost, countsOf(text));
      const presses = [...text].reduce((sum, char) => sum + (pressesOf.get(char)?.length ?? 0), 0);
      const countedIn = (length: number) =>
        ((runs[length - 1] ?? []).reduce((sum, run) => sum + run.per1000Words, 0) * [...text].length) / 5000;
      for (const length of [1, 2, 3, 4])
        expect(countedIn(length)).toBeCloseTo(Math.max(0, presses - length + 1), 6);
    },
  );

  test('a layout decides what follows what: pairs of the same text on another layout are other pairs of keys', () => {
    const swapped = plainKeymap({
      T: { tap: { do: 'char', char: 'k' } },
      K: { tap: { do: 'char', char: 't' } },
    });
    const onPlain = englishOn(plainKeymap());
    const onSwapped = englishOn(swapped);
    const keysOfTh = ({ pressesOf, presses }: typeof onPlain) =>
      ['t', 'h'].map((char) => presses[pressesOf.get(char)?.[0] ?? -1]?.keys[0]);
    expect(keysOfTh(onPlain)).not.toEqual(keysOfTh(onSwapped));
  });
});

describe('text drawn from counts', () => {
  const source = textSource(english, randomLcg(0.123));
  const drawn = Array.from({ length: 60_000 }, source);

  test.each(['e', 't', ' ', 'a', 'q'])('has %j as often as the text', (char) => {
    const share = drawn.filter((each) => each === char).length / drawn.length;
    const real = countOfRun(english, [char]) / english.total;
    expect(Math.abs(share - real)).toBeLessThan(4 * Math.sqrt(real / drawn.length) + 0.05 * real);
  });

  test.each(['th', 'er', 'e ', 'the', 'ing '])('has %j as often as the text', (run) => {
    const found = drawn.join('').split(run).length - 1;
    const real = (countOfRun(english, [...run]) / english.total) * drawn.length;
    expect(found / real).toBeGreaterThan(0.85);
    expect(found / real).toBeLessThan(1.15);
  });

  property.prop([fc.string({ unit: fc.constantFrom('a', 'b', '😀'), minLength: 1, maxLength: 30 })])(
    'draws nothing that the text has not',
    (text) => {
      const next = textSource(countsOf(text), randomLcg(0.5));
      for (let at = 0; at < 50; at++) expect([...text]).toContain(next());
    },
  );
});
