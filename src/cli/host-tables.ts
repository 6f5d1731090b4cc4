import { join } from 'node:path';
import { fail, ok, type Result } from '../core/base/result.ts';
import { correctedTable } from '../core/host/corrected-host.ts';
import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import { type HostTable, readHostTable } from '../core/host/host-table.ts';
import { usTable } from '../core/host/us-table.ts';
import type { Host } from '../core/keymap/types.ts';
import { publicFolder } from './public-folder.ts';
import { readJson } from './read-text.ts';

const TABLE_BYTES = 8 * 1024 * 1024;

/** XKB names of a layout and, after a space, its variant: `de`, "us mac". */
export function hostNames(text: string): Pick<Host, 'layout' | 'variant'> {
  const [layout = '', ...variant] = text.trim().split(/\s+/);
  return { layout, variant: variant.join(' ') };
}

/**
 * A host layout from its table among those that come with the project, read with the host's own corrections. The
 * problem is a sentence that lists the layouts there are.
 */
export function loadHost(
  wanted: Pick<Host, 'layout' | 'variant' | 'corrections'>,
): Result<HostLayout, string> {
  const table = loadTable(wanted);
  return table.ok ? ok(hostFromTable(correctedTable(table.value, wanted.corrections ?? []))) : table;
}

function loadTable({ layout, variant }: Pick<Host, 'layout' | 'variant'>): Result<HostTable, string> {
  if (layout === 'us' && variant === '') return ok(usTable);
  const name = variant === '' ? layout : `${layout} ${variant}`;
  const offered = offeredHosts();
  const file = offered.get(name);
  if (file === undefined) {
    return fail(
      `There is no table for the host layout "${name}"; there are ${[...offered.keys()].join(', ')}.`,
    );
  }
  const json = readJson(join(publicFolder(), 'hosts', file), TABLE_BYTES);
  if (!json.ok) return json;
  const table = readHostTable(json.value);
  return table.ok ? table : fail(`${file}: ${table.problem}.`);
}

/** File names by layout and variant; `us` alone where the list cannot be read. */
function offeredHosts(): ReadonlyMap<string, string> {
  const index = readJson(join(publicFolder(), 'hosts/index.json'), TABLE_BYTES);
  const list: unknown[] = index.ok && Array.isArray(index.value) ? index.value : [];
  return new Map([['us', 'us.json'], ...list.flatMap(offeredHost)]);
}

function offeredHost(entry: unknown): readonly (readonly [string, string])[] {
  if (entry === null || typeof entry !== 'object') return [];
  if (!('layout' in entry && 'variant' in entry && 'file' in entry)) return [];
  const { layout, variant, file } = entry;
  if (typeof layout !== 'string' || typeof variant !== 'string' || typeof file !== 'string') return [];
  return [[variant === '' ? layout : `${layout} ${variant}`, file]];
}
