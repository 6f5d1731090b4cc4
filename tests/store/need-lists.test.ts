import { describe, expect, test } from 'vitest';
import { needText } from '../../src/core/keymap/need.ts';
import { needListNamed } from '../../src/core/needs/need-lists.ts';
import { loadOfferedLanguages, NeedListCache } from '../../src/store/need-lists.ts';

const files = import.meta.glob<unknown>('../../public/needs/*.json', { import: 'default' });

/** The tables that are served with the page, as the server would give them out. */
function served() {
  const asked: string[] = [];
  const fetchTable = async (address: string): Promise<unknown> => {
    asked.push(address);
    const load = files[address.replace('./', '../../public/')];
    if (load === undefined) throw new Error(`${address}: 404`);
    return load();
  };
  return { asked, fetchTable };
}

/** Settles when the cache has told of something new. */
const next = (cache: NeedListCache) => new Promise<void>((resolve) => cache.subscribe(resolve));

describe('need lists', () => {
  test('those that are built in are there without a request', () => {
    const { asked, fetchTable } = served();
    expect(new NeedListCache(fetchTable).find()('ascii')).toBe(needListNamed('ascii'));
    expect(asked).toEqual([]);
  });

  test('lists that are waited for are there at once afterwards, and an unknown name is no harm', async () => {
    const { asked, fetchTable } = served();
    const find = await new NeedListCache(fetchTable).loaded(['ascii', 'cldr:pl:letters', 'no-such-list']);
    expect(find('cldr:pl:letters')?.needs.map(needText)).toContain('ł');
    expect(find('ascii')).toBe(needListNamed('ascii'));
    expect(find('no-such-list')).toBeUndefined();
    expect(asked).toEqual(['./needs/cldr-pl.json']);
  });

  test("a language's list is empty while it is on its way, and then has its letters", async () => {
    const { asked, fetchTable } = served();
    const cache = new NeedListCache(fetchTable);
    const before = cache.find();
    expect(before('cldr:pl:letters')?.needs).toEqual([]);
    await next(cache);
    expect(cache.find()).not.toBe(before);
    // Unicode CLDR, main exemplar characters of Polish; ł among them.
    expect(cache.find()('cldr:pl:letters')?.needs.map(needText)).toContain('ł');
    expect(asked).toEqual(['./needs/cldr-pl.json']);
  });

  test('a list that cannot be had is unknown, and is asked for only once', async () => {
    const { asked, fetchTable } = served();
    const cache = new NeedListCache(fetchTable);
    cache.find()('cldr:qqq');
    await next(cache);
    expect(cache.find()('cldr:qqq')).toBeUndefined();
    expect(asked).toHaveLength(1);
  });

  test('a name of no kind is unknown without a request', () => {
    const { asked, fetchTable } = served();
    expect(new NeedListCache(fetchTable).find()('constructor')).toBeUndefined();
    expect(asked).toEqual([]);
  });

  test('the languages offered can be found by the names they are offered under', async () => {
    const { fetchTable } = served();
    const offered = await loadOfferedLanguages(fetchTable);
    expect(offered.length).toBeGreaterThan(40);
    const cache = new NeedListCache(fetchTable);
    for (const { name } of offered.slice(0, 6)) {
      cache.find()(name);
      await next(cache);
      expect(cache.find()(name)?.needs.length).toBeGreaterThan(0);
    }
    expect(await loadOfferedLanguages(async () => Promise.reject(new Error('offline')))).toEqual([]);
  });
});
