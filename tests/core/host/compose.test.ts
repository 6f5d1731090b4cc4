import { fc, test as property } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import { canonicalCompose, canonicalCompositions, composeWith } from '../../../src/core/host/compose.ts';

describe('Unicode canonical composition', () => {
  test.each([
    [['dead_acute'], 'e', 'é'],
    [['dead_diaeresis'], 'U', 'Ü'],
    [['dead_acute', 'dead_circumflex'], 'a', 'ấ'],
    [['dead_abovedot', 'dead_belowdot'], 's', 'ṩ'],
    [['dead_acute'], 'q', undefined],
    [['dead_greek'], 'a', undefined],
    [['dead_acute'], 'dead_acute', undefined],
  ])('%s and %s: %s', (dead, next, composed) => {
    expect(canonicalCompose(dead, next)).toBe(composed);
  });

  test('a table overrides it', () => {
    const table = { dead_acute: { e: 'x', q: 'y' } };
    expect(composeWith(table, ['dead_acute'], 'e')).toBe('x');
    expect(composeWith(table, ['dead_acute'], 'q')).toBe('y');
    expect(composeWith(table, ['dead_acute'], 'a')).toBe('á');
    expect(composeWith(table, ['dead_acute'], 'constructor')).toBeUndefined();
  });
});

describe('taking a character apart', () => {
  test('one mark and two marks, in either order where Unicode has both', () => {
    expect(canonicalCompositions('é')).toEqual([{ dead: ['dead_acute'], next: 'e' }]);
    expect(canonicalCompositions('ấ')).toContainEqual({ dead: ['dead_acute', 'dead_circumflex'], next: 'a' });
    expect(canonicalCompositions('ấ')).toContainEqual({ dead: ['dead_acute'], next: 'â' });
    expect(canonicalCompositions('a')).toEqual([]);
  });

  const latin = fc.integer({ min: 0xc0, max: 0x24f }).map((point) => String.fromCharCode(point));
  const vietnamese = fc.integer({ min: 0x1e00, max: 0x1ef9 }).map((point) => String.fromCharCode(point));
  property.prop([fc.oneof(latin, vietnamese)], { numRuns: 2000 })(
    'a letter with one mark is made of what it is taken apart into',
    (char) => {
      const compositions = canonicalCompositions(char);
      if ([...char.normalize('NFD')].length !== 2) return;
      const made = compositions.map(({ dead, next }) => canonicalCompose(dead, next));
      expect(made).toEqual(compositions.map(() => char));
      expect(made.length).toBeLessThanOrEqual(1);
    },
  );

  test('every letter with one mark up to U+024F can be made with a dead key', () => {
    const letters = Array.from({ length: 0x250 - 0xc0 }, (_, at) => String.fromCharCode(0xc0 + at));
    const marked = letters.filter((char) => [...char.normalize('NFD')].length === 2);
    const without = marked.filter((char) => canonicalCompositions(char).length === 0);
    expect(marked.length).toBeGreaterThan(200);
    expect(without).toEqual([]);
  });
});
