import { describe, expect, test } from 'vitest';
import { boardRows } from '../../../src/core/board/rows.ts';
import { estimateAccidents } from '../../../src/core/typist/accidents.ts';
import { personOfGroup } from '../../../src/core/typist/person.ts';
import { countSets, suggestChords, USUAL_WISH } from '../../../src/core/typist/suggest-chords.ts';
import { chordOver, englishOn, keyOf, plainKeymap } from './plain-board.ts';

const person = personOfGroup('average');
const wish = { ...USUAL_WISH, layers: ['base'] };
const keysOf = (letters: string) => [...letters].map((letter) => keyOf.get(letter) ?? '').sort();
const plain = plainKeymap();
const runs = englishOn(plain);

describe('all sets of keys for a chord', () => {
  const { suggestions, considered, stoppedBy } = suggestChords(plain, runs, person, {
    ...wish,
    limit: 70_000,
  });
  const rankOf = (letters: string) =>
    suggestions.findIndex(({ keys }) => [...keys].sort().join() === keysOf(letters).join());

  test('every set of 2 to 4 of 36 keys is looked at, the best first', () => {
    expect(considered).toBe((36 * 35) / 2 + (36 * 35 * 34) / 6 + (36 * 35 * 34 * 33) / 24);
    expect(stoppedBy).toBe('all');
    const costs = suggestions.map(({ cost }) => cost);
    expect(costs).toEqual(costs.toSorted((one, other) => one - other));
  });

  test.each([
    ['DF', 'ER', 'letters that the text puts side by side are worse'],
    ['SD', 'WD', 'so are rows apart'],
    ['JK', 'UM', 'a finger that presses two keys is worse than any two that press one each'],
    ['DF', 'ASDF', 'and more keys than it takes'],
  ])('%s comes before %s: %s', (better, worse) => {
    expect(rankOf(better)).toBeGreaterThanOrEqual(0);
    expect(rankOf(better)).toBeLessThan(rankOf(worse));
  });

  test.each(['any', 'one', 'two'] as const)('how many sets there are is known before: %s', (hands) => {
    const of = { ...wish, hands, keys: [2, 3] as const };
    expect(suggestChords(plain, runs, person, of).considered).toBe(countSets(plain.board, of));
  });

  test('progress is told on the way', () => {
    const told: number[] = [];
    suggestChords(plain, runs, person, wish, (sets) => told.push(sets));
    expect(told.length).toBe(Math.floor(considered / 8192));
    expect(told).toEqual(told.toSorted((one, other) => one - other));
  });

  test('a budget stops it', () => {
    const few = suggestChords(plain, runs, person, { ...wish, mostSets: 700 });
    expect(few).toMatchObject({ considered: 700, stoppedBy: 'budget' });
  });
});

const many = suggestChords(plain, runs, person, { ...wish, limit: 10_000, keys: [2, 3] }).suggestions;

test.each(['DF', 'TH', 'ER', 'THE', 'JK'])('the ranking has the figures of the estimate: %s', (letters) => {
  const found = many.find(({ keys }) => [...keys].sort().join() === keysOf(letters).join());
  const [chord] = estimateAccidents(plainKeymap({}, [chordOver(letters, 50)]), runs, person).chords;
  // The ranking looks at no other chord, the estimate at the chord itself with the key before as well.
  expect(found?.misfiresPer1000Words).toBeCloseTo(chord?.misfiresPer1000Words ?? -1, 1);
  expect(found?.missesPer1000Uses).toBeCloseTo(chord?.missesPer1000Uses ?? -1, 6);
});

describe('what a set gets in the way of', () => {
  const keymap = plainKeymap({ F: { hold: { do: 'key', code: 'ShiftLeft' } } }, [
    chordOver('SD', 50),
    chordOver('JKL', 50),
  ]);
  const here = englishOn(keymap);
  const { suggestions } = suggestChords(keymap, here, person, { ...wish, limit: 10_000, keys: [2, 3] });
  const conflictsOf = (letters: string) =>
    suggestions.find(({ keys }) => [...keys].sort().join() === keysOf(letters).join())?.conflicts;

  test('a set that is a chord already is left out', () => {
    expect(conflictsOf('SD')).toBeUndefined();
    expect(conflictsOf('JKL')).toBeUndefined();
  });

  test('chords that it holds or that hold it, and keys with a hold, are named', () => {
    expect(conflictsOf('JK')).toEqual([{ what: 'larger-chord', chord: 'chord-JKL' }]);
    expect(conflictsOf('SDE')).toEqual([{ what: 'smaller-chord', chord: 'chord-SD' }]);
    expect(conflictsOf('DF')).toEqual([{ what: 'hold-tap', key: keyOf.get('F') }]);
    expect(conflictsOf('WE')).toEqual([]);
  });

  test('a key that is held while others are pressed is named, be it for a layer or as a modifier', () => {
    const [, , , thumbs = []] = boardRows(keymap.board);
    const shift = thumbs[2] ?? '';
    const withShift = suggestions.filter(({ keys }) => keys.includes(shift));
    expect(withShift.length).toBeGreaterThan(30);
    for (const { conflicts } of withShift) expect(conflicts).toContainEqual({ what: 'held-key', key: shift });
  });

  test('a chord that has all keys but one is named, and costs something', () => {
    const nearOf = (letters: string) =>
      suggestions.find(({ keys }) => [...keys].sort().join() === keysOf(letters).join())?.near;
    expect(nearOf('SX')).toEqual(['chord-SD']);
    expect(nearOf('JKO')).toEqual(['chord-JKL']);
    expect(nearOf('WE')).toEqual([]);
    const costOf = (keysIn: typeof suggestions, letters: string) =>
      keysIn.find(({ keys }) => [...keys].sort().join() === keysOf(letters).join())?.cost ?? 0;
    expect(costOf(suggestions, 'KL')).toBeGreaterThan(costOf(many, 'KL'));
    expect(costOf(suggestions, 'WE')).toBeCloseTo(costOf(many, 'WE'), 9);
  });

  test('a chord of the same shape on the other hand is named', () => {
    const mirrored = suggestions.find(({ keys }) => [...keys].sort().join() === keysOf('KL').join());
    expect(mirrored?.like).toEqual(['chord-SD']);
  });
});
