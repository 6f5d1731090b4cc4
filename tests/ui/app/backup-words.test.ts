import { expect, test } from 'vitest';
import type { PartPlan } from '../../../src/store/keeping/backup/restore.ts';
import { backupName, hasAnything, madeWords, partWords } from '../../../src/ui/app/backup/backup-words.ts';

const part: PartPlan = {
  id: 'x',
  title: 'x',
  added: [],
  both: [],
  united: 0,
  stays: 0,
  same: 0,
  invalid: 0,
  toChoose: 0,
};

test.each<[Partial<PartPlan>, string]>([
  [{ added: ['River', 'Harbour'] }, '2 are added (River, Harbour)'],
  [{ added: [...'abcdefgh'] }, '8 are added (a, b, c, d, e, f and 2 more)'],
  [{ added: ['', ''], same: 1 }, '2 are added; 1 is here just so'],
  [{ both: ['River, copy'] }, '1 differs from here and is kept beside it (River, copy)'],
  [{ united: 3, invalid: 1 }, '3 are made one with those here; 1 is left out: not to be read'],
  [{ stays: 2, same: 1 }, '2 differ from here: what is here stays; 1 is here just so'],
  [{}, ''],
])('%j: %s', (plan, words) => {
  expect(partWords({ ...part, ...plan })).toBe(words);
});

test('a backup is called by its day', () => {
  const day = Date.UTC(2026, 2, 4, 5, 6);
  expect(backupName(day)).toBe('handful-backup-2026-03-04.json');
  expect(madeWords(day)).toBe('The backup of 2026-03-04, 05:06 UTC');
  expect(madeWords(0)).toBe('This backup');
});

test('nothing to bring back where all of it is here', () => {
  const plan = (one: Partial<PartPlan>) => ({
    madeAt: 0,
    parts: [{ ...part, ...one }],
    unknown: [],
    carryOut: async () => {},
  });
  expect(hasAnything(plan({ same: 4 }))).toBe(false);
  expect(hasAnything(plan({ toChoose: 1 }))).toBe(true);
});
