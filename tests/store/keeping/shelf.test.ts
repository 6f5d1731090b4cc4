import { describe, expect, test } from 'vitest';
import { type KeyValue, memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { Shelf } from '../../../src/store/keeping/shelf.ts';
import { sample } from '../sample.ts';

const named = (name: string) => ({ ...sample, name });

function shelfOn(values: KeyValue = memoryKeyValue()) {
  return { values, shelf: new Shelf(values) };
}

describe('the shelf', () => {
  test('gives back what was put on it', async () => {
    const { shelf } = shelfOn();
    await shelf.write('a', sample, 5);
    expect(await shelf.read('a')).toEqual({ ok: true, value: sample });
  });

  test('lists the design changed last first, those of one time by name', async () => {
    const { shelf } = shelfOn();
    await shelf.write('a', named('Later'), 1);
    await shelf.write('b', named('Beech'), 2);
    await shelf.write('c', named('Ash'), 2);
    await shelf.write('a', named('Latest'), 3);
    expect(await shelf.list()).toEqual([
      { id: 'a', name: 'Latest', changedAt: 3 },
      { id: 'c', name: 'Ash', changedAt: 2 },
      { id: 'b', name: 'Beech', changedAt: 2 },
    ]);
  });

  test('a design taken off is gone from list and store', async () => {
    const { shelf } = shelfOn();
    await shelf.write('a', sample, 1);
    await shelf.remove('a');
    expect(await shelf.list()).toEqual([]);
    expect(await shelf.read('a')).toMatchObject({ ok: false, problem: { stored: undefined } });
  });

  test('remembers which was open last', async () => {
    const { shelf } = shelfOn();
    expect(await shelf.lastOpen()).toBeNull();
    await shelf.setLastOpen('a');
    expect(await shelf.lastOpen()).toBe('a');
  });

  test('a crash after the record and before the index loses nothing', async () => {
    const { values, shelf } = shelfOn();
    const dying: KeyValue = {
      ...values,
      set: (name, value) => (name === 'index' ? Promise.reject(new Error('crash')) : values.set(name, value)),
    };
    await shelf.write('a', sample, 1);
    await expect(new Shelf(dying).write('b', named('New'), 2)).rejects.toThrow('crash');
    expect((await shelf.list()).map((design) => design.name)).toEqual(['New', 'Four keys']);
    expect((await shelf.read('b')).ok).toBe(true);
  });

  test('an index that is broken or gone is made up from the records', async () => {
    const { values, shelf } = shelfOn();
    await shelf.write('a', sample, 7);
    for (const index of [undefined, 'rubbish', [{ id: 3 }], [{ id: 'gone', name: 'x', changedAt: 1 }]]) {
      await values.set('index', index);
      expect(await shelf.list()).toEqual([{ id: 'a', name: 'Four keys', changedAt: 7 }]);
    }
  });

  test.each([
    ['a record that is none', 'rubbish'],
    ['a record without a keymap', { changedAt: 1 }],
    ['a keymap with a field of the wrong kind', { changedAt: 1, keymap: { ...sample, layers: 3 } }],
    ['a keymap of a version to come', { changedAt: 1, keymap: { ...sample, version: 99 } }],
  ])('%s is told with a sentence, listed, and left as it is', async (_, stored) => {
    const { values, shelf } = shelfOn();
    await values.set('design:a', stored);
    const read = await shelf.read('a');
    expect(read.ok).toBe(false);
    if (!read.ok) expect(read.problem.sentence).toMatch(/\w.*\.$/);
    expect((await shelf.list()).map((design) => design.id)).toEqual(['a']);
    expect(await values.get('design:a')).toEqual(stored);
  });
});
