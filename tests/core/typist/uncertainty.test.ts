import { describe, expect, test } from 'vitest';
import {
  oftenInWords,
  plainNumber,
  rangeInWords,
  rateInWords,
} from '../../../src/core/typist/uncertainty.ts';

describe('rates in words', () => {
  test.each([
    [0, 'practically never', ''],
    [0.049, 'practically never', ''],
    [0.3, 'about 0.3', 'between 0.2 and 0.6'],
    [1, 'about 1', 'between 0.5 and 2'],
    [2.94, 'about 2.9', 'between 1.5 and 5.9'],
    [12.6, 'about 13', 'between 6.3 and 25'],
    [184, 'about 180', 'between 92 and 370'],
    [1234, 'about 1,200', 'between 620 and 2,500'],
  ])('%d: %s, %s', (rate, words, range) => {
    expect([rateInWords(rate), rangeInWords(rate)]).toEqual([words, range]);
  });

  test('once is one time', () => {
    expect(oftenInWords(1.02)).toBe('about 1 time in 1,000 words (between 0.5 and 2)');
    expect(oftenInWords(0.001)).toBe('practically never');
  });

  test('a number under a tenth is no less than a tenth: whoever prints it has said that it is not nothing', () => {
    expect(plainNumber(0.051)).toBe('0.1');
  });
});
