import { describe, expect, test } from 'vitest';
import { MM_OF_POINT, settable, textMm, wrapped } from '../../../src/core/drawing/set-text.ts';
import { outlineOf, readSheetType } from '../../../src/core/drawing/sheet-type.ts';
import { projectType } from './sheet-type-of-project.ts';

const type = projectType();

describe('the letters of the sheet', () => {
  test.each([...'äßøłőžÆŒ€£¥©«»“”‘’–—…←→↑↓≤≥≠∞αΩжЯ±×÷√∂∑'])('there is an outline for %s', (sign) => {
    expect(outlineOf(type, 'sans', sign)?.path).toMatch(/^m/);
  });

  test('a face without a sign takes that of the sans face', () => {
    expect(outlineOf(type, 'italic', '←')).toEqual(outlineOf(type, 'sans', '←'));
  });

  test.each([
    ['👩‍🚀', 'U+1F469+U+200D+U+1F680'],
    ['語', 'U+8A9E'],
    ['a\nb', 'a b'],
  ])('%j is set as %s', (text, set) => {
    expect(settable(type, 'sans', text)).toBe(set);
  });

  test.each([[null], [{ faces: {} }], [{ faces: { sans: { a: 'm0 0<' }, serif: {}, italic: {} } }]])(
    'a table such as %j is refused',
    (json) => {
      expect(readSheetType(json).ok).toBe(false);
    },
  );
});

describe('lines', () => {
  test('a text is as wide as its letters together', () => {
    expect(textMm(type, 'sans', 10, '00')).toBeCloseTo(
      2 * ((outlineOf(type, 'sans', '0')?.advance ?? 0) / 1000) * 10 * MM_OF_POINT,
      9,
    );
  });

  test('break at spaces, and inside a word only where it alone is too wide', () => {
    const width = textMm(type, 'sans', 8, 'locked by');
    expect(wrapped(type, 'sans', 8, 'locked by left thumbthumbthumb', width)).toEqual([
      'locked by',
      'left',
      'thumbth',
      'umbthu',
      'mb',
    ]);
  });
});
