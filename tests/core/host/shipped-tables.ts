import { readdirSync, readFileSync } from 'node:fs';
import type { HostTable } from '../../../src/core/host/host-table.ts';
import { readHostTable } from '../../../src/core/host/host-table.ts';

const FOLDER = new URL('../../../public/hosts/', import.meta.url);

/** Reads one of the tables that come with the project, by its file name without the ending. */
export function shippedTable(name: string): HostTable {
  const read = readHostTable(JSON.parse(readFileSync(new URL(`${name}.json`, FOLDER), 'utf8')));
  if (!read.ok) throw new Error(`${name}: ${read.problem}`);
  return read.value;
}

/** File names of all tables that come with the project, without the ending. */
export const SHIPPED_TABLES: readonly string[] = readdirSync(FOLDER)
  .filter((file) => file.endsWith('.json') && file !== 'index.json')
  .map((file) => file.replace('.json', ''))
  .sort();
