import { readFileSync } from 'node:fs';
import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { readHostTable } from '../../../src/core/host/host-table.ts';
import { usTable } from '../../../src/core/host/us-table.ts';
import { SHIPPED_TABLES, shippedTable } from './shipped-tables.ts';

describe('reading a table from outside', () => {
  test('a sound one comes back as it is', () => {
    expect(readHostTable(JSON.parse(JSON.stringify(usTable)))).toEqual({ ok: true, value: usTable });
  });

  test.each([
    ['no object', 'us', 'the whole'],
    ['a key that is none', { ...usTable, keys: { KeyÄ: usTable.keys.KeyA } }, 'keys'],
    ['a row too short', { ...usTable, keys: { KeyA: ['a'] } }, 'keys.KeyA'],
    ['an output that is a text', { ...usTable, keys: { KeyA: Array(8).fill('a long text') } }, 'keys.KeyA.0'],
    ['a level 3 that is no modifier', { ...usTable, level3: 'KeyA' }, 'level3'],
    ['a compose row that is none', { ...usTable, compose: { acute: {} } }, 'compose'],
    ['a field that nobody knows', { ...usTable, more: 1 }, 'the whole'],
  ])('%s is refused with its place', (_, table, place) => {
    const read = readHostTable(table);
    expect(read.ok ? '' : read.problem).toContain(`not a host table: ${place}`);
  });
});

describe('the tables that come with the project', () => {
  test('are 12 kB or less compressed, every one', () => {
    for (const name of SHIPPED_TABLES) {
      const bytes = readFileSync(new URL(`../../../public/hosts/${name}.json`, import.meta.url));
      expect(gzipSync(bytes).length).toBeLessThanOrEqual(12 * 1024);
    }
  });

  test('are those that the index names', () => {
    const index = JSON.parse(
      readFileSync(new URL('../../../public/hosts/index.json', import.meta.url), 'utf8'),
    );
    const files: { layout: string; variant: string; title: string; file: string }[] = index;
    expect(files.map(({ file }) => file.replace('.json', '')).toSorted()).toEqual(SHIPPED_TABLES);
    for (const { layout, variant, title, file } of files) {
      const table = shippedTable(file.replace('.json', ''));
      expect([table.layout, table.variant, table.title]).toEqual([layout, variant, title]);
    }
  });
});
