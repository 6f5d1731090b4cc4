import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { createTextCounter, type TextCounts } from '../../../src/core/needs/text-counts.ts';

function countOf(...pieces: string[]): TextCounts {
  const counter = createTextCounter();
  for (const piece of pieces) counter.add(piece);
  return counter.counts();
}

const pairsOf = (counts: TextCounts) =>
  [...counts.pairs].flatMap(([one, row]) => [...row].map(([other, n]) => [one + other, n]));

describe('characters and pairs of a text', () => {
  test('letters and their neighbours', () => {
    const counts = countOf('abab');
    expect(counts.total).toBe(4);
    expect([...counts.chars]).toEqual([
      ['a', 2],
      ['b', 2],
    ]);
    expect(pairsOf(counts)).toEqual([
      ['ab', 2],
      ['ba', 1],
    ]);
  });

  test.each([
    ['a line break is one character however it is written', ['a\r\nb\rc\nd'], 7, '\n', 3],
    ['a carriage return at a seam waits for its line feed', ['a\r', '\nb'], 3, '\n', 1],
    ['a decomposed letter counts in NFC', ['e\u0301'], 1, '\u00e9', 1],
    ['a cluster without a composed form is one character', ['n\u0308x'], 2, 'n\u0308', 1],
    ['a character beyond the basic plane is one', ['a\u{1F600}b'], 3, '\u{1F600}', 1],
    ['a flag is one', ['\u{1F1E9}\u{1F1EA}'], 1, '\u{1F1E9}\u{1F1EA}', 1],
    ['a lone surrogate does no harm', ['a\ud800b'], 3, '\ud800', 1],
  ])('%s', (_, pieces, total, char, n) => {
    const counts = countOf(...pieces);
    expect(counts.total).toBe(total);
    expect(counts.chars.get(char)).toBe(n);
  });

  test('no pair spans the break between two texts', () => {
    const counter = createTextCounter();
    counter.add('ab');
    counter.endText();
    counter.add('cd');
    expect(pairsOf(counter.counts()).map(([pair]) => pair)).toEqual(['ab', 'cd']);
  });

  test('as many characters as the grapheme segmentation of Unicode Standard Annex 29 (by Intl.Segmenter) finds', () => {
    const segmenter = new Intl.Segmenter('en', { granularity: 'grapheme' });
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 60 }), (text) => {
        const normal = text.normalize('NFC').replace(/\r\n?/g, '\n');
        const counter = createTextCounter();
        counter.add(text);
        counter.endText();
        expect(counter.counts().total).toBe([...segmenter.segment(normal)].length);
      }),
      { numRuns: 1000 },
    );
  });

  test('plain text in pieces counts as in one', () => {
    fc.assert(
      fc.property(fc.array(fc.string({ maxLength: 20 }), { maxLength: 6 }), (pieces) => {
        const whole = countOf(pieces.join(''));
        const parts = countOf(...pieces);
        expect(parts.total).toBe(whole.total);
        expect(new Map(pairsOf(parts).map(([k, v]) => [k, v]))).toEqual(
          new Map(pairsOf(whole).map(([k, v]) => [k, v])),
        );
      }),
      { numRuns: 500 },
    );
  });
});
