import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { findingId } from '../../../src/core/findings/finding-id.ts';
import { hostFromTable } from '../../../src/core/host/host-from-table.ts';
import { readKeymap } from '../../../src/core/keymap/read.ts';
import type { Keymap } from '../../../src/core/keymap/types.ts';
import { SHIPPED_TABLES, shippedTable } from '../host/shipped-tables.ts';
import { faultsOfMend, findingsOf } from './taking-a-mend.ts';

const FOLDER = new URL('../../../demo-layouts/', import.meta.url);
const FILES = readdirSync(FOLDER).filter((file) => file.endsWith('.json'));

function demo(file: string): Keymap {
  const read = readKeymap(readFileSync(new URL(file, FOLDER), 'utf8'));
  if (!read.ok) throw new Error(read.problem[0]?.sentence ?? file);
  return read.value;
}

/** The host that a design is used on first, from the tables that come with the project. */
function hostOf({ hosts }: Keymap) {
  const tables = SHIPPED_TABLES.map(shippedTable);
  const table = tables.find(
    ({ layout, variant }) => layout === hosts[0]?.layout && variant === hosts[0]?.variant,
  );
  if (table === undefined) throw new Error(`no table of ${hosts[0]?.layout}`);
  return hostFromTable(table);
}

describe.each(FILES)('%s', (file) => {
  const keymap = demo(file);
  const host = hostOf(keymap);

  it('has mends that remove their findings and bring no worse ones', () => {
    const mends = findingsOf(keymap, host).flatMap((finding) =>
      finding.mends.map((mend) => ({ finding, mend })),
    );
    expect(mends.length).toBeGreaterThan(0);
    expect(mends.flatMap(({ finding, mend }) => faultsOfMend(keymap, host, finding, mend))).toEqual([]);
  });

  it('has findings that read well and are told apart', () => {
    const findings = findingsOf(keymap, host);
    /** Ids that could not be words of a sentence. */
    const ids = [...keymap.layers, ...(keymap.chords ?? [])]
      .map(({ id }) => id)
      .filter((id) => /[\d-]/.test(id));
    for (const { message } of findings) {
      expect(message).not.toMatch(/undefined|NaN|null|Infinity|\[object/);
      expect(message.split(/[^\w-]+/).filter((word) => ids.includes(word))).toEqual([]);
    }
    expect(new Set(findings.map(findingId)).size).toBe(findings.length);
  });
});
