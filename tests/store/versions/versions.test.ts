import { beforeEach, describe, expect, test } from 'vitest';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { useBench } from '../../../src/store/bench.ts';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { makeVersions } from '../../../src/store/versions/make-versions.ts';
import { BETWEEN_MS, KEPT_VERSIONS } from '../../../src/store/versions/version.ts';
import { watchWork } from '../../../src/store/versions/watch-work.ts';
import { sample } from '../sample.ts';

const named = (name: string): Keymap => ({ ...sample, name });
const MINUTE = 60_000;

function scene() {
  const values = memoryKeyValue();
  const clock = { now: 1_000_000 };
  let ids = 0;
  const store = makeVersions({ values, now: () => clock.now, newId: () => `v${++ids}` });
  const names = () => store.getState().versions.map(({ name, keymap }) => name ?? `(${keymap.name})`);
  return { values, clock, store, versions: store.getState, names };
}

describe('versions kept by hand', () => {
  test('the newest first, by design, and there again after a reload', async () => {
    const { versions, clock, names, values } = scene();
    await versions().load('a');
    await versions().keep('a', named('One'), 'first');
    clock.now += 1;
    await versions().keep('a', named('Two'), 'second');
    await versions().keep('b', named('Other'), 'of another design');
    expect(names()).toEqual(['second', 'first']);
    const again = makeVersions({ values, now: () => 0, newId: () => '' });
    await again.getState().load('b');
    expect(again.getState().versions).toMatchObject([
      { name: 'of another design', keymap: { name: 'Other' } },
    ]);
  });

  test('renamed, removed, forgotten', async () => {
    const { versions, names, values } = scene();
    await versions().load('a');
    await versions().keep('a', named('One'), 'first');
    await versions().rename('a', 'v1', 'before the trip');
    expect(names()).toEqual(['before the trip']);
    await versions().remove('a', 'v1');
    expect(names()).toEqual([]);
    await versions().keep('a', named('One'), 'again');
    await versions().forget('a');
    expect([await values.names(), versions().versions]).toEqual([[], []]);
  });

  test('no more than can be kept, and none is dropped for another', async () => {
    const { versions } = scene();
    await versions().load('a');
    for (let at = 0; at < KEPT_VERSIONS.named; at++) await versions().keep('a', named(`${at}`), `${at}`);
    expect(await versions().keep('a', named('more'), 'more')).toBe(false);
    expect(versions().versions).toHaveLength(KEPT_VERSIONS.named);
  });

  test('kept at the same time, none is lost', async () => {
    const { versions, names } = scene();
    await versions().load('a');
    await Promise.all(['x', 'y', 'z'].map((name) => versions().keep('a', named(name), name)));
    expect(names().toSorted()).toEqual(['x', 'y', 'z']);
  });

  test('that cannot be read at all say why', async () => {
    const values = { ...memoryKeyValue(), get: () => Promise.reject(new Error('the disk is gone')) };
    const { getState } = makeVersions({ values, now: () => 0, newId: () => '' });
    await getState().load('a');
    expect(getState()).toMatchObject({ designId: 'a', versions: [], problem: 'the disk is gone' });
  });

  test('what is stored and is no version is left out', async () => {
    const { versions, values, names } = scene();
    await versions().keep('a', named('Good'), 'good');
    const stored = await values.get('a');
    await values.set('a', [
      ...(Array.isArray(stored) ? stored : []),
      7,
      { id: 'x', name: null, keptAt: 1, keymap: {} },
    ]);
    await versions().load('a');
    expect(names()).toEqual(['good']);
    // Nor is it deleted when another version is kept.
    await versions().keep('a', named('Better'), 'better');
    expect(names()).toEqual(['good', 'better'].toSorted());
    expect(await values.get('a')).toHaveLength(3);
  });
});

describe('versions kept by themselves', () => {
  beforeEach(() => useBench.setState(useBench.getInitialState()));
  const edit = (name: string) => useBench.getState().edit({ edit: 'rename-design', name });

  async function work() {
    const all = scene();
    useBench.getState().open('a', named('Start'));
    await all.versions().load('a');
    const stop = watchWork(useBench, all.store, () => all.clock.now);
    return { ...all, stop, settle: () => all.versions().load('a') };
  }

  test('the state before the first change, then at most one in ten minutes of work', async () => {
    const { clock, names, settle, stop } = await work();
    for (let minute = 0; minute <= 25; minute++) {
      edit(`Minute ${minute}`);
      await settle();
      clock.now += MINUTE;
    }
    expect(names()).toEqual(['(Minute 19)', '(Minute 9)', '(Start)']);
    stop();
  });

  test('none without work, none of a design that is only looked at', async () => {
    const { clock, names, settle, stop } = await work();
    clock.now += 10 * BETWEEN_MS;
    useBench.getState().open('b', named('Other'));
    useBench.getState().setReadOnly(true);
    edit('Refused');
    await settle();
    expect(names()).toEqual([]);
    stop();
  });

  test('none of a state that was kept by hand just before', async () => {
    const { versions, names, settle, stop } = await work();
    await versions().keep('a', useBench.getState().keymap, 'by hand');
    edit('Changed');
    await settle();
    expect(names()).toEqual(['by hand']);
    stop();
  });

  test('of too many the oldest give way, and never a named one', async () => {
    const { versions, clock } = scene();
    await versions().load('a');
    await versions().keep('a', named('Kept'), 'the oldest');
    for (let at = 0; at < KEPT_VERSIONS.byThemselves + 5; at++) {
      clock.now += BETWEEN_MS;
      await versions().worked('a', named(`${at}`));
    }
    const all = versions().versions;
    expect(all).toHaveLength(KEPT_VERSIONS.byThemselves + 1);
    expect(all.at(-1)?.name).toBe('the oldest');
    expect(all[0]?.keymap.name).toBe(`${KEPT_VERSIONS.byThemselves + 4}`);
  });
});
