import { describe, expect, test } from 'vitest';
import { type MigrationSteps, migrate, type RawDocument, VERSION } from '../../../src/core/keymap/migrate.ts';
import { keymapSchema } from '../../../src/core/keymap/schema.ts';

const format = 'neutral-keymap';

/** Steps of a later time: 1 to 2 renames a field, 2 to 3 adds one. */
const later: MigrationSteps = new Map<number, (document: RawDocument) => RawDocument>([
  [1, ({ name, ...rest }: RawDocument) => ({ ...rest, title: name })],
  [2, (document: RawDocument) => ({ ...document, added: true })],
]);

describe('older versions are brought to the present one, step by step', () => {
  test('through all the steps from where they are', () => {
    expect(migrate({ format, version: 1, name: 'Old' }, later, 3)).toEqual({
      ok: true,
      value: { format, version: 3, title: 'Old', added: true },
    });
    expect(migrate({ format, version: 2, title: 'Less old' }, later, 3)).toEqual({
      ok: true,
      value: { format, version: 3, title: 'Less old', added: true },
    });
  });

  test('the present version is handed on untouched', () => {
    const document = { format, version: 3, anything: [1] };
    const read = migrate(document, later, 3);
    expect(read.ok && read.value).toBe(document);
  });

  test('the version of the steps is the version of the schema', () => {
    expect(keymapSchema.shape.version.def.values).toEqual([VERSION]);
  });

  test.each([
    [4, 'neutral-keymap version 4, which is newer'],
    [0, 'neutral-keymap version 0'],
    [1.5, 'neutral-keymap version 1.5'],
    [-1, 'neutral-keymap version -1'],
    [Number.POSITIVE_INFINITY, 'neutral-keymap version Infinity, which is newer'],
    [Number.NaN, 'neutral-keymap version NaN'],
    ['1', '"1"'],
    [undefined, 'nothing'],
  ])('version %s is refused', (version, found) => {
    expect(migrate({ format, version }, later, 3)).toEqual({
      ok: false,
      problem: { path: ['version'], found, expected: 'a version that this program reads: 3' },
    });
  });
});
