import { describe, expect, test } from 'vitest';
import { gatherChosen, gatherEntries } from '../../../src/store/own-text/gather-files.ts';

type Tree = { readonly [name: string]: Tree | string };

/** A dropped tree as the platform hands it out: folders two entries at a time, a file "!" cannot be read. */
function entry(name: string, tree: Tree | string): FileSystemEntry {
  const base = { name, fullPath: `/${name}`, filesystem: {}, getParent: () => {} };
  if (typeof tree === 'string') {
    const file = (found: (file: File) => void, failed: () => void) =>
      tree === '!' ? failed() : found(new File([tree], name));
    return Object.assign(base, { isFile: true, isDirectory: false, file }) as unknown as FileSystemEntry;
  }
  const createReader = () => {
    const rest = Object.entries(tree).map(([child, below]) => entry(child, below));
    return { readEntries: (found: (some: FileSystemEntry[]) => void) => found(rest.splice(0, 2)) };
  };
  return Object.assign(base, {
    isFile: false,
    isDirectory: true,
    createReader,
  }) as unknown as FileSystemEntry;
}

const tree = {
  'a.ts': 'a',
  lib: { 'b.ts': 'b', 'c.ts': 'c', 'd.ts': 'd', deep: { 'e.ts': 'e' } },
  '.git': { config: 'x' },
  node_modules: { other: { 'index.js': 'x' } },
  'broken.ts': '!',
};

const names = (files: readonly File[]) => files.map(({ name }) => name);

describe('what was dropped', () => {
  test('folders are walked in order, hidden ones and what was fetched are not', async () => {
    const { files, moreThanLimit } = await gatherEntries([entry('src', tree), entry('z.txt', 'z')]);
    expect(names(files)).toEqual(['a.ts', 'b.ts', 'c.ts', 'd.ts', 'e.ts', 'z.txt']);
    expect(moreThanLimit).toBe(false);
  });

  test('it ends at the limit and says so', async () => {
    const { files, moreThanLimit } = await gatherEntries([entry('src', tree)], 2);
    expect([names(files), moreThanLimit]).toEqual([['a.ts', 'b.ts'], true]);
    expect((await gatherEntries([entry('src', tree)], 5)).moreThanLimit).toBe(false);
  });
});

describe('what was chosen', () => {
  const chosen = (...paths: string[]) =>
    paths.map((path) => {
      const file = new File(['x'], path.split('/').at(-1) ?? '');
      Object.defineProperty(file, 'webkitRelativePath', { value: path });
      return file;
    });

  test('the folder itself is meant, whatever its name; hidden ones inside it are not', () => {
    const files = chosen(
      '.notes/a.txt',
      '.notes/.git/config',
      '.notes/node_modules/b/c.js',
      '.notes/in/d.txt',
    );
    expect(names(gatherChosen(files).files)).toEqual(['a.txt', 'd.txt']);
  });

  test('it ends at the limit and says so', () => {
    const files = chosen('s/a', 's/b', 's/c');
    expect(gatherChosen(files, 2)).toMatchObject({ moreThanLimit: true });
    expect(gatherChosen(files, 3)).toMatchObject({ moreThanLimit: false });
  });
});
