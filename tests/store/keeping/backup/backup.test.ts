import { fc } from '@fast-check/vitest';
import { describe, expect, test } from 'vitest';
import type { Keymap } from '../../../../src/core/keymap/types.ts';
import {
  BACKUP_BYTES,
  backupText,
  readBackup,
  readBackupFile,
} from '../../../../src/store/keeping/backup/backup-file.ts';
import { designsPart, versionsPart } from '../../../../src/store/keeping/backup/designs-part.ts';
import type { BackupPart } from '../../../../src/store/keeping/backup/part.ts';
import { fromPlain, toPlain } from '../../../../src/store/keeping/backup/plain.ts';
import { planRestore } from '../../../../src/store/keeping/backup/restore.ts';
import { type KeyValue, memoryKeyValue } from '../../../../src/store/keeping/key-value.ts';
import { Shelf } from '../../../../src/store/keeping/shelf.ts';
import { readVersions } from '../../../../src/store/versions/version.ts';
import { sample } from '../../sample.ts';

const named = (name: string): Keymap => ({ ...sample, name });

describe('values in a file', () => {
  const anything = fc.letrec((tie) => ({
    value: fc.oneof(
      { maxDepth: 3 },
      fc.string(),
      fc.double(),
      fc.boolean(),
      fc.constant(null),
      fc.array(tie('value'), { maxLength: 3 }),
      fc.dictionary(fc.oneof(fc.string(), fc.constantFrom('$map', '$plain', '$schema')), tie('value'), {
        maxKeys: 3,
        noNullPrototype: true,
      }),
      fc.array(fc.tuple(fc.string(), tie('value')), { maxLength: 3 }).map((pairs) => new Map(pairs)),
      fc.array(fc.string(), { maxLength: 3 }).map((all) => new Set(all)),
      fc.float64Array({ maxLength: 4 }),
      fc.uint8Array({ maxLength: 4 }),
    ),
  })).value;

  test('come back as they were', () => {
    void fc.assert(
      fc.property(anything, (value) => {
        expect(fromPlain(JSON.parse(JSON.stringify(toPlain(value))))).toEqual(minusZeroIsZero(value));
      }),
      { numRuns: 400 },
    );
  });

  /** JSON has no negative zero. */
  function minusZeroIsZero(value: unknown): unknown {
    if (Object.is(value, -0)) return 0;
    if (value instanceof Map) return new Map([...value].map(([key, field]) => [key, minusZeroIsZero(field)]));
    if (value instanceof Float64Array) return value.map((number) => number + 0);
    if (Array.isArray(value)) return value.map(minusZeroIsZero);
    if (typeof value !== 'object' || value === null || Object.getPrototypeOf(value) !== Object.prototype)
      return value;
    return Object.fromEntries(Object.entries(value).map(([name, field]) => [name, minusZeroIsZero(field)]));
  }

  test('what no file can hold is refused', () => {
    expect(() => toPlain(() => 1)).toThrow(/cannot be written/);
    expect(() => toPlain(new Date(0))).toThrow(/cannot be written/);
  });

  test.each([[{ $map: 1 }], [{ $map: [1] }], [{ $numbers: ['Function', []] }], [{ $set: {}, more: 1 }]])(
    '%j is damaged',
    (plain) => {
      expect(() => fromPlain(plain)).toThrow(/^found/);
    },
  );
});

describe('a file that is no backup', () => {
  test.each([
    ['hello', /no JSON; expected a backup file/],
    ['[]', /Found something else; expected a backup file/],
    ['{"format":"neutral-keymap"}', /Found a file of the format “neutral-keymap”/],
    ['{"format":"handful-backup","version":2}', /Found version 2 of backup files; this page reads version 1/],
    ['{"format":"handful-backup","version":1}', /no parts/],
    ['{"format":"handful-backup","version":1,"parts":{"designs":7}}', /damaged: found no list/],
    [
      '{"format":"handful-backup","version":1,"parts":{"designs":[[1,2]]}}',
      /damaged: found something without a name/,
    ],
    [
      '{"format":"handful-backup","version":1,"parts":{"designs":[["a",{"$map":1}]]}}',
      /damaged: found no list/,
    ],
    [
      `{"format":"handful-backup","version":1,"parts":{"designs":[["a",${'['.repeat(100_000)}${']'.repeat(100_000)}]]}}`,
      /damaged|no JSON/,
    ],
  ])('%.60s is told', (text, sentence) => {
    const read = readBackup(text);
    expect(read.ok ? '' : read.problem).toMatch(sentence);
  });

  test('one that is too large is not read at all', async () => {
    const file = { size: BACKUP_BYTES + 1, text: () => Promise.reject(new Error('was read')) };
    expect(await readBackupFile(file)).toEqual({
      ok: false,
      problem: 'The file holds 64.0 MiB; 64 MiB at most can be read.',
    });
  });
});

/** A browser with designs, versions, and one thing of its own. */
function browser() {
  const stores = {
    designs: memoryKeyValue(),
    versions: memoryKeyValue(),
    own: memoryKeyValue(),
    things: memoryKeyValue(),
  };
  const parts: readonly BackupPart[] = [
    designsPart(stores.designs),
    versionsPart(stores.versions),
    { id: 'own', title: 'own text', values: stores.own, meeting: { rule: 'choose' } },
    {
      id: 'things',
      title: 'things',
      values: stores.things,
      meeting: { rule: 'both', renamed: (name, id) => `${name}-${id}` },
    },
  ];
  const shelf = new Shelf(stores.designs);
  let ids = 0;
  const restore = async (text: string) => {
    const read = readBackup(text);
    if (!read.ok) throw new Error(read.problem);
    return planRestore(read.value, parts, () => `new${++ids}`);
  };
  const all = async () =>
    Promise.all(
      Object.values(stores).map(async (values: KeyValue) =>
        Promise.all((await values.names()).toSorted().map(async (name) => [name, await values.get(name)])),
      ),
    );
  return { ...stores, parts, shelf, restore, all, text: async () => (await backupText(parts, 0)).text };
}

const version = (id: string, keptAt: number) => ({ id, name: id, keptAt, keymap: named(id) });

describe('restoring', () => {
  async function full() {
    const from = browser();
    await from.shelf.write('a', named('River'), 10);
    await from.shelf.write('b', named('Harbour'), 20);
    await from.shelf.setLastOpen('b');
    await from.versions.set('a', [version('v2', 2), version('v1', 1)]);
    await from.own.set('own text', { counts: new Map([['e', 7]]) });
    await from.things.set('t', { value: 1 });
    return from;
  }

  test('into a clean browser brings everything', async () => {
    const from = await full();
    const to = browser();
    const plan = await to.restore(await from.text());
    expect(plan.parts.map(({ id, added }) => [id, added.length])).toEqual([
      ['designs', 2],
      ['versions', 1],
      ['own', 1],
      ['things', 1],
    ]);
    await plan.carryOut(new Set());
    expect((await to.shelf.list()).map(({ id, name, changedAt }) => [id, name, changedAt])).toEqual([
      ['b', 'Harbour', 20],
      ['a', 'River', 10],
    ]);
    expect(await to.shelf.read('a')).toEqual({ ok: true, value: named('River') });
    expect(await to.own.get('own text')).toEqual({ counts: new Map([['e', 7]]) });
    expect(readVersions(await to.versions.get('a')).map(({ id }) => id)).toEqual(['v2', 'v1']);
  });

  test('into the same browser changes nothing', async () => {
    const from = await full();
    const before = await from.all();
    const plan = await from.restore(await from.text());
    expect(plan.parts.map(({ same }) => same)).toEqual([2, 1, 1, 1]);
    await plan.carryOut(new Set(['own']));
    expect(await from.all()).toEqual(before);
  });

  test('beside other states loses neither: designs and things are both kept, versions made one', async () => {
    const from = await full();
    const to = browser();
    await to.shelf.write('a', named('River'), 10);
    await to.shelf.write('a', { ...named('River'), notes: 'changed here' }, 30);
    await to.versions.set('a', [version('v3', 3), version('v1', 1)]);
    await to.things.set('t', { value: 2 });
    const plan = await to.restore(await from.text());
    expect(plan.parts.map(({ added, both, united }) => [added.length, both, united])).toEqual([
      [1, ['River, copy'], 0],
      [0, [], 1],
      [1, [], 0],
      [0, [''], 0],
    ]);
    await plan.carryOut(new Set());
    expect((await to.shelf.list()).map(({ name }) => name).toSorted()).toEqual([
      'Harbour',
      'River',
      'River, copy',
    ]);
    expect(await to.shelf.read('a')).toMatchObject({ ok: true, value: { notes: 'changed here' } });
    expect(readVersions(await to.versions.get('a')).map(({ id }) => id)).toEqual(['v3', 'v2', 'v1']);
    expect(await to.things.get('t')).toEqual({ value: 2 });
    const [copy = ''] = (await to.things.names()).filter((name) => name !== 't');
    expect(await to.things.get(copy)).toEqual({ value: 1 });
  });

  test.each([
    [[], 'here'],
    [['own'], 'backup'],
  ])('of what there is one of, the typist says which stands: %j', async (chosen, stands) => {
    const from = browser();
    await from.own.set('own text', 'backup');
    const to = browser();
    await to.own.set('own text', 'here');
    const plan = await to.restore(await from.text());
    expect(plan.parts.find(({ id }) => id === 'own')?.toChoose).toBe(1);
    await plan.carryOut(new Set(chosen));
    expect(await to.own.get('own text')).toBe(stands);
  });

  test('what is no design, and what this page does not know, is left out and told', async () => {
    const text = JSON.stringify({
      format: 'handful-backup',
      version: 1,
      madeAt: '2026-03-04T05:06:07.000Z',
      parts: {
        designs: [
          ['design:bad', { changedAt: 1, keymap: { layers: 'torn' } }],
          ['index', [{ id: 'ghost', name: 'Ghost', changedAt: 5 }]],
        ],
        dreams: [['x', 1]],
      },
    });
    const to = browser();
    const plan = await to.restore(text);
    expect([plan.parts[0]?.invalid, plan.unknown, plan.madeAt]).toEqual([
      1,
      ['dreams'],
      Date.UTC(2026, 2, 4, 5, 6, 7),
    ]);
    await plan.carryOut(new Set());
    expect(await to.designs.names()).toEqual([]);
  });
});
