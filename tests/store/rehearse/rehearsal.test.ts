import { beforeEach, describe, expect, test } from 'vitest';
import { usHost } from '../../../src/core/host/us.ts';
import { plainText, shownText } from '../../../src/core/rehearse/shown-text.ts';
import { useBench } from '../../../src/store/bench.ts';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { readOverlay } from '../../../src/store/rehearse/kept-overlays.ts';
import { makeKeptThings } from '../../../src/store/rehearse/kept-things.ts';
import { useRehearsal } from '../../../src/store/rehearse/rehearsal.ts';
import { sample } from '../../core/rehearse/played.ts';

const store = () => useRehearsal.getState();
const liveText = () => plainText(shownText(store().live?.run.items ?? []).tokens);
const press = (key: string, t: number, up: number) => {
  store().press({ t, key, type: 'down' });
  store().press({ t: up, key, type: 'up' });
};

beforeEach(() => {
  store().stopTyping('', null);
  store().take(null);
  store().clearTries();
});

describe('typing', () => {
  test('answers each key at once and ends as a stream that begins at nought', () => {
    store().startTyping(sample, usHost);
    press('A', 5000.04, 5080);
    expect(liveText()).toBe('a');
    press('S', 5200, 5280);
    expect(liveText()).toBe('as');
    store().stopTyping('Typed', 'as');
    expect(store().live).toBeNull();
    expect(store().stream).toEqual({
      name: 'Typed',
      made: { how: 'typed' },
      meant: 'as',
      events: [
        { t: 0, key: 'A', type: 'down' },
        { t: 80, key: 'A', type: 'up' },
        { t: 200, key: 'S', type: 'down' },
        { t: 280, key: 'S', type: 'up' },
      ],
    });
  });

  test('time that passes lets a hold come, but not so soon that a key on its way would be late', () => {
    store().startTyping(sample, usHost);
    store().press({ t: 1000, key: 'F', type: 'down' });
    const held = () => store().live?.run.presses[0]?.result;
    store().pass(1210);
    expect(held()).toBe('undecided');
    store().pass(1230);
    expect(held()).toBe('hold');
  });

  test('a key that comes with an earlier time is put in its place', () => {
    store().startTyping(sample, usHost);
    store().press({ t: 1000, key: 'R', type: 'down' });
    // Far too late: the window is over by the clock when the key of the time before arrives.
    store().pass(1200);
    store().press({ t: 1030, key: 'T', type: 'down' });
    expect(store().live?.run.presses.map(({ result }) => result)).toEqual(['chord', 'chord']);
  });

  test('nothing typed is no stream', () => {
    store().startTyping(sample, usHost);
    store().stopTyping('Typed', null);
    expect([store().live, store().stream]).toEqual([null, null]);
  });
});

test('a second try at a setting takes the place of the first', () => {
  const tried = (title: string, windowMs: number) =>
    store().tryOut({ title, edit: { edit: 'change-chord', chord: 'rt', to: { windowMs } } });
  tried('30', 30);
  store().tryOut({ title: 'q', edit: { edit: 'change-chord', chord: 'rt', to: { quietBeforeMs: 90 } } });
  tried('40', 40);
  expect(store().tries.map(({ title }) => title)).toEqual(['q', '40']);
  store().dropTry(0);
  expect(store().tries.map(({ title }) => title)).toEqual(['40']);
});

test('what is tried on a design is not tried on the next', () => {
  useBench.getState().open('one', sample);
  store().tryOut({ title: '30', edit: { edit: 'change-chord', chord: 'rt', to: { windowMs: 30 } } });
  store().compareWith({ with: 'design as it is' });
  useBench.getState().open('two', sample);
  expect([store().tries, store().compared]).toEqual([[], { with: 'nothing' }]);
});

describe('kept things', () => {
  const make = (values = memoryKeyValue(), ids = ['one', 'two']) => {
    let now = 0;
    return makeKeptThings(
      values,
      readOverlay,
      () => ++now,
      () => ids.shift() ?? 'more',
    );
  };
  const overlay = { title: 'Mine', keys: { KeyA: 'L1' } };

  test('are there again at the next visit, the last first, and gone when removed', async () => {
    const values = memoryKeyValue();
    const first = make(values);
    await first.getState().keep(overlay);
    await first.getState().keep({ ...overlay, title: 'Other' });
    const next = make(values);
    await next.getState().start();
    expect(next.getState().things.map(({ id, value }) => [id, value.title])).toEqual([
      ['two', 'Other'],
      ['one', 'Mine'],
    ]);
    await next.getState().remove('two');
    await next.getState().keep({ ...overlay, title: 'Changed' }, 'one');
    const last = make(values);
    await last.getState().start();
    expect(last.getState().things.map(({ value }) => value)).toEqual([{ ...overlay, title: 'Changed' }]);
  });

  test('what is stored and cannot be read is left where it is', async () => {
    const values = memoryKeyValue();
    await values.set('odd', { keptAt: 1, value: 7 });
    const things = make(values);
    await things.getState().start();
    expect(things.getState().things).toEqual([]);
    expect(await values.get('odd')).toEqual({ keptAt: 1, value: 7 });
  });

  test('a disk that refuses is told, and the thing is there for this visit', async () => {
    const values = { ...memoryKeyValue(), set: () => Promise.reject(new Error('full')) };
    const things = make(values);
    await things.getState().keep(overlay);
    expect([things.getState().things.length, things.getState().problem]).toEqual([1, 'full']);
  });
});
