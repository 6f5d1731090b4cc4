// @vitest-environment node
import { describe, expect, test } from 'vitest';
import { memoryKeyValue } from '../../../src/store/keeping/key-value.ts';
import { nameOfFiles, notesOf, readOwnText } from '../../../src/store/own-text/kept-text.ts';
import { makeOwnText, type StartCount } from '../../../src/store/own-text/make-own-text.ts';
import { countFiles } from '../../../src/workers/count-files.ts';

/** A file as a browser makes it: Node's knows no folders. */
function fileOf(content: BlobPart, name: string): File {
  const file = new File([content], name);
  Object.defineProperty(file, 'webkitRelativePath', { value: '' });
  return file;
}

/** Counts on the spot, and tells whether it was broken off. */
function counting() {
  const stopped: number[] = [];
  let started = 0;
  const startCount: StartCount = (files, tell) => {
    const mine = started++;
    return { counted: countFiles(files, tell), stop: () => stopped.push(mine) };
  };
  return { startCount, stopped };
}

const folder = (...files: readonly File[]) => Promise.resolve({ files, moreThanLimit: false });

function fresh(values = memoryKeyValue()) {
  const { startCount, stopped } = counting();
  return { store: makeOwnText(values, startCount, () => 1000), values, stopped };
}

describe('the own text', () => {
  test('is counted, kept, and there again at the next visit', async () => {
    const { store, values } = fresh();
    await store.getState().count(folder(fileOf('abba', 'song.txt')));
    expect(store.getState()).toMatchObject({
      text: { name: 'song.txt', countedAt: 1000, files: 1, counts: { total: 4 } },
      counting: { state: 'idle' },
    });
    const { store: later } = fresh(values);
    await later.getState().start();
    expect(later.getState().text).toEqual(store.getState().text);
  });

  test('is gone for good when it is forgotten', async () => {
    const { store, values } = fresh();
    await store.getState().count(folder(fileOf('a', 'a.txt')));
    await store.getState().forget();
    expect(store.getState().text).toBeNull();
    expect(await values.names()).toEqual([]);
  });

  test('looks kept once it is kept, and gone once it is gone: the page may be left at any moment', async () => {
    const { store, values } = fresh();
    const seen: [string | undefined, readonly string[]][] = [];
    const look = async () => {
      const name = store.getState().text?.name;
      seen.push([name, await values.names()]);
    };
    const stop = store.subscribe((now, before) => {
      if (now.text !== before.text) void look();
    });
    await store.getState().count(folder(fileOf('a', 'a.txt')));
    await store.getState().forget();
    await Promise.resolve();
    stop();
    expect(seen).toEqual([
      ['a.txt', ['own text']],
      [undefined, []],
    ]);
  });

  test('what cannot be deleted stays, and the reason is told', async () => {
    const values = memoryKeyValue();
    const { store } = fresh({ ...values, del: () => Promise.reject(new Error('The disk is full.')) });
    await store.getState().count(folder(fileOf('a', 'a.txt')));
    await store.getState().forget();
    expect(store.getState()).toMatchObject({
      text: { name: 'a.txt' },
      counting: { state: 'failed', why: 'The disk is full.' },
    });
  });

  test('a count that is broken off leaves the old text, whenever it ends', async () => {
    const { store } = fresh();
    await store.getState().count(folder(fileOf('old', 'old.txt')));
    const late = store.getState().count(folder(fileOf('new', 'new.txt')));
    store.getState().cancel();
    await late;
    expect(store.getState()).toMatchObject({ text: { name: 'old.txt' }, counting: { state: 'idle' } });
  });

  test('a second count takes the place of the one that is going on', async () => {
    const { store } = fresh();
    const first = store.getState().count(folder(fileOf('first', 'first.txt')));
    const second = store.getState().count(folder(fileOf('second', 'second.txt')));
    await Promise.all([first, second]);
    expect(store.getState().text?.name).toBe('second.txt');
  });

  test.each([
    ['nothing', [], 'There is no file in that.'],
    ['an empty file', [fileOf('', 'empty.txt')], 'There is no text in that.'],
    [
      'a picture',
      [fileOf(new Uint8Array([1, 0]), 'a.png')],
      'There is no text in that. 1 file was left out: no text.',
    ],
  ])('%s is refused with a sentence', async (_what, files, why) => {
    const { store } = fresh();
    await store.getState().count(folder(...files));
    expect(store.getState()).toMatchObject({ text: null, counting: { state: 'failed', why } });
  });

  test('every count ends its worker', async () => {
    const { store, stopped } = fresh();
    await store.getState().count(folder(fileOf('a', 'a.txt')));
    await store.getState().count(folder(fileOf('', 'b.txt')));
    expect(stopped).toEqual([0, 1]);
  });
});

describe('what is kept', () => {
  test.each([null, 'text', { name: 'a' }, { name: 'a', countedAt: 1, files: 1, counts: {}, notes: [] }])(
    '%j is no text',
    (stored) => expect(readOwnText(stored)).toBeNull(),
  );

  test('limits that were hit are said with their number', () => {
    const left = { binaries: 2, otherwiseEncoded: 0, unreadable: 0, beyondLimit: 1 };
    const limits = { moreThanLimit: true, mostFiles: 20_000, mostBytes: 100_000_000 };
    expect(notesOf(left, limits)).toEqual([
      'Only the first 20,000 files were taken: that is the limit.',
      '1 file was left out, beyond the limit of 100 MB in all.',
      '2 files were left out: no text.',
    ]);
  });

  test.each([
    [[['a.txt', '']], 'a.txt'],
    [
      [
        ['a.txt', ''],
        ['b.txt', ''],
      ],
      '2 files',
    ],
    [
      [
        ['a.ts', 'src/a.ts'],
        ['b.ts', 'src/in/b.ts'],
      ],
      'src',
    ],
  ])('%j is called %s', (files, name) => {
    expect(
      nameOfFiles(files.map(([file = '', path = '']) => ({ name: file, webkitRelativePath: path }))),
    ).toBe(name);
  });
});
