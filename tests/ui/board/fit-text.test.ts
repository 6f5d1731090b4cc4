import { fc, test } from '@fast-check/vitest';
import { describe, expect } from 'vitest';
import { fitText, graphemes, LINE, textWidth } from '../../../src/ui/board/fit-text.ts';

const SPACE = { width: 10, height: 8, most: 7, least: 2 };

describe('fitting a legend', () => {
  test.each([
    { text: 'j', lines: ['j'], size: 7 },
    { text: 'Volume up', lines: ['Volume', 'up'] },
    { text: 'Extraordinary', lines: ['Extrao…'], size: 2 },
    { text: '👩‍👩‍👧', lines: ['👩‍👩‍👧'] },
  ])('$text', ({ text, lines, size }) => {
    const fitted = fitText(text, SPACE);
    expect(fitted.lines).toEqual(lines);
    if (size !== undefined) expect(fitted.size).toBe(size);
  });

  test('a short second word does not break the line', () => {
    expect(fitText('F 1', SPACE).lines).toEqual(['F 1']);
  });

  test('an accent does not widen its letter', () => {
    expect(textWidth('é')).toBe(textWidth('e'));
    expect(textWidth('Ŵ')).toBe(textWidth('W'));
  });

  test.prop([fc.oneof(fc.string({ unit: 'grapheme-ascii' }), fc.string({ unit: 'binary' }))])(
    'takes a text apart as Unicode does, also where it is plain',
    (text) => {
      const segments = [...new Intl.Segmenter('en', { granularity: 'grapheme' }).segment(text)];
      expect(graphemes(text)).toEqual(segments.map(({ segment }) => segment));
    },
  );

  test.prop([
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 40 }),
    fc.record({
      width: fc.double({ min: 4, max: 30, noNaN: true }),
      height: fc.double({ min: 3, max: 30, noNaN: true }),
      most: fc.double({ min: 2, max: 9, noNaN: true }),
      least: fc.constant(1.2),
    }),
  ])('never takes more than its space, and never more than the text', (text, space) => {
    const { lines, size } = fitText(text, space);
    for (const line of lines) expect(textWidth(line) * size).toBeLessThanOrEqual(space.width + 1e-9);
    expect(lines.length * size * LINE).toBeLessThanOrEqual(space.height + 1e-9);
    expect(size).toBeLessThanOrEqual(space.most);
    expect(graphemes(lines.join(' ')).length).toBeLessThanOrEqual(graphemes(text).length + 1);
  });
});
