import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { differences } from '../../../src/core/rehearse/align.ts';

const words = (one: string, other: string) =>
  differences([...one], [...other]).map(
    ({ oneFrom, oneTo, otherFrom, otherTo }) =>
      `${one.slice(oneFrom, oneTo)}→${other.slice(otherFrom, otherTo)}`,
  );

/** The length of the longest common subsequence, by the table that every textbook has. */
function commonLength(one: readonly string[], other: readonly string[]): number {
  let row = new Array<number>(other.length + 1).fill(0);
  for (const a of one) {
    const next = [0];
    for (const [at, b] of other.entries())
      next.push(a === b ? (row[at] ?? 0) + 1 : Math.max(row[at + 1] ?? 0, next[at] ?? 0));
    row = next;
  }
  return row.at(-1) ?? 0;
}

const texts = fc.array(fc.constantFrom('a', 'b', 'c'), { maxLength: 14 });

describe('differences', () => {
  test.each([
    ['same', 'same', []],
    ['', 'new', ['→new']],
    ['other', 'oter', ['h→']],
    ['the rain', 'the train', ['→t']],
    ['abc', 'axc', ['b→x']],
    ['abcdef', 'xbcdey', ['a→x', 'f→y']],
  ])('%s against %s', (one, other, expected) => {
    expect(words(one, other)).toEqual(expected);
  });

  test.prop([texts, texts], { numRuns: 300 })('are as few as can be, and all else is equal', (one, other) => {
    const found = differences(one, other);
    const gone = found.reduce((sum, each) => sum + each.oneTo - each.oneFrom, 0);
    const come = found.reduce((sum, each) => sum + each.otherTo - each.otherFrom, 0);
    const common = commonLength(one, other);
    expect([gone, come]).toEqual([one.length - common, other.length - common]);
    const kept = one.filter((_, at) => !found.some(({ oneFrom, oneTo }) => at >= oneFrom && at < oneTo));
    const alsoKept = other.filter(
      (_, at) => !found.some(({ otherFrom, otherTo }) => at >= otherFrom && at < otherTo),
    );
    expect(kept).toEqual(alsoKept);
  });

  test('texts that have nothing in common are one difference, and quickly', () => {
    const one = Array.from({ length: 4000 }, (_, at) => `a${at}`);
    const other = Array.from({ length: 4000 }, (_, at) => `b${at}`);
    expect(differences(one, other)).toEqual([{ oneFrom: 0, oneTo: 4000, otherFrom: 0, otherTo: 4000 }]);
  });
});
