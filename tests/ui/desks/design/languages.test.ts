import { describe, expect, test } from 'vitest';
import index from '../../../../public/needs/index.json';
import { findLanguages, namedLanguages } from '../../../../src/ui/desks/design/needs/languages.ts';

const languages = namedLanguages(index);
const found = (query: string, most = 4) => findLanguages(languages, query, most).map(({ list }) => list);

describe('finding a language', () => {
  // Own names as Unicode CLDR has them, by way of the runtime's Intl.
  test.each([
    ['polski', 'cldr:pl'],
    ['Polish', 'cldr:pl'],
    ['deut', 'cldr:de'],
    ['turkce', 'cldr:tr'],
    ['portugues', 'cldr:pt'],
    ['hu', 'cldr:hu'],
  ])('%s finds %s', (query, list) => {
    expect(found(query)).toContain(list);
  });

  test('names that begin with it come before those that have it inside', () => {
    const all = findLanguages(languages, 'en', 100);
    const begins = all.map(({ title, ownName, list }) =>
      [title.toLowerCase(), ownName?.toLowerCase() ?? '', list.slice(5)].some((name) =>
        name.startsWith('en'),
      ),
    );
    expect(begins.indexOf(false)).toBeGreaterThan(0);
    expect(begins.lastIndexOf(true)).toBeLessThan(begins.indexOf(false));
  });

  test.each(['', '  ', 'no such tongue'])('“%s” finds nothing', (query) => expect(found(query)).toEqual([]));

  test('a language is not given another one’s name where the runtime knows none', () => {
    const [unknown] = namedLanguages([{ name: 'cldr:zz', title: 'Nowhere', count: 1 }]);
    expect(unknown?.ownName).toBeNull();
  });
});
