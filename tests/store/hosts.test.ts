import { describe, expect, test } from 'vitest';
import { usHost } from '../../src/core/host/us.ts';
import { HostCache, loadOfferedHosts } from '../../src/store/hosts.ts';

const files = import.meta.glob<unknown>('../../public/hosts/*.json', { import: 'default' });
const german = { layout: 'de', variant: '' };

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

describe('host layouts', () => {
  test('us is there at once, without a request', () => {
    const { asked, fetchTable } = served();
    const cache = new HostCache(fetchTable);
    expect(cache.known({ layout: 'us', variant: '' })).toMatchObject({ host: usHost, state: 'ready' });
    expect(asked).toEqual([]);
  });

  test('another is loaded once, us standing in meanwhile', async () => {
    const { asked, fetchTable } = served();
    const cache = new HostCache(fetchTable);
    const loading = cache.known(german);
    expect(loading).toMatchObject({ host: usHost, state: 'loading' });
    expect(cache.known(german)).toBe(loading);
    const host = await cache.whenLoaded(german);
    expect(asked).toEqual(['./hosts/de.json']);
    // ISO 9995 and DIN 2137: ß lies right of 0, on the key that W3C calls Minus.
    expect(host.routesOf('ß')[0]).toEqual([{ code: 'Minus', with: [] }]);
    expect(cache.known(german)).toMatchObject({ host, state: 'ready' });
  });

  test('those who watch are told when it has come', async () => {
    const cache = new HostCache(served().fetchTable);
    let told = 0;
    const stop = cache.subscribe(() => told++);
    await cache.whenLoaded(german);
    expect(told).toBe(1);
    stop();
    await cache.whenLoaded({ layout: 'fr', variant: '' });
    expect(told).toBe(1);
  });

  test.each([
    ['is not there', async () => Promise.reject(new Error('404'))],
    ['is no table', async () => ({ layout: 'xx' })],
  ])('where the table %s, us stays and it is said', async (_, fetchTable) => {
    const cache = new HostCache(fetchTable);
    const wanted = { layout: 'xx', variant: '' };
    expect(await cache.whenLoaded(wanted)).toBe(usHost);
    expect(cache.known(wanted).state).toBe('missing');
  });

  test('a variant has a table of its own', async () => {
    const { asked, fetchTable } = served();
    await new HostCache(fetchTable).whenLoaded({ layout: 'us', variant: 'intl' });
    expect(asked).toEqual(['./hosts/us-intl.json']);
  });

  test('corrections hold for the host that has them, and the same ones give the same host', async () => {
    const { asked, fetchTable } = served();
    const cache = new HostCache(fetchTable);
    const corrections = [{ code: 'KeyL', level: 'level3', gives: 'ŀ' }] as const;
    const corrected = { ...german, corrections };
    const host = await cache.whenLoaded(corrected);
    expect(host.routesOf('ŀ')[0]).toEqual([{ code: 'KeyL', with: ['AltRight'] }]);
    expect(cache.known({ ...corrected }).host).toBe(host);
    expect(asked).toEqual(['./hosts/de.json']);
    expect(cache.known(german).table.keys.KeyL).not.toEqual(cache.known(corrected).table.keys.KeyL);
    // One list of corrections on two layouts, as when a host is changed and keeps its list.
    const onUs = { layout: 'us', variant: '', corrections };
    expect(cache.known(onUs).host).toMatchObject({ layout: 'us', level3: 'AltRight' });
    expect(cache.known(corrected).host.layout).toBe('de');
  });

  test('where the table is missing, us stands in without the corrections', async () => {
    const corrections = [{ code: 'KeyA', level: 'plain', gives: 'q' }] as const;
    const cache = new HostCache(async () => Promise.reject(new Error('404')));
    expect(await cache.whenLoaded({ layout: 'xx', variant: '', corrections })).toBe(usHost);
  });

  test('every offered host can be loaded', async () => {
    const { fetchTable } = served();
    const cache = new HostCache(fetchTable);
    const offered = await loadOfferedHosts(fetchTable);
    expect(offered.length).toBeGreaterThan(1);
    for (const host of offered) {
      const loaded = await cache.whenLoaded(host);
      expect(loaded).toMatchObject({ layout: host.layout, variant: host.variant });
    }
  });

  test('where the list cannot be had, us is offered', async () => {
    const none = async () => Promise.reject(new Error('offline'));
    expect(await loadOfferedHosts(none)).toMatchObject([{ layout: 'us', variant: '' }]);
  });
});
