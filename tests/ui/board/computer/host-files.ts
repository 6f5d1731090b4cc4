import { hostFromTable } from '../../../../src/core/host/host-from-table.ts';
import { readHostTable } from '../../../../src/core/host/host-table.ts';
import type { KnownHost } from '../../../../src/store/hosts.ts';

const files = import.meta.glob<unknown>('../../../../public/hosts/*.json', { import: 'default' });

/** A file of the host layouts that come with the page. */
export async function hostFile(name: string): Promise<unknown> {
  return files[`../../../../public/hosts/${name}.json`]?.();
}

/** A layout that comes with the page, as the store knows it. */
export async function knownHost(name: string): Promise<KnownHost> {
  const read = readHostTable(await hostFile(name));
  if (!read.ok) throw new Error(read.problem);
  return { host: hostFromTable(read.value), table: read.value, state: 'ready' };
}
