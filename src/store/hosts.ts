import { useSyncExternalStore } from 'react';
import { fail, ok, type Result } from '../core/base/result.ts';
import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import { readHostTable } from '../core/host/host-table.ts';
import { usHost } from '../core/host/us.ts';
import type { Host, Keymap } from '../core/keymap/types.ts';

/** Reads a table of a host layout by its address; hands back what was in it. */
export type FetchTable = (address: string) => Promise<unknown>;

/** A host layout as far as it is known: while it is loaded, and where there is none, `us` stands in. */
export interface KnownHost {
  readonly host: HostLayout;
  readonly state: 'ready' | 'loading' | 'missing';
}

const pageFetch: FetchTable = async (address) => {
  const answer = await fetch(address);
  if (!answer.ok) throw new Error(`${address}: ${answer.status}`);
  return answer.json();
};

/**
 * The host layouts that have been loaded. `us` is there from the start; every other is fetched the first time
 * that a design asks for it.
 */
export class HostCache {
  readonly #fetchTable: FetchTable;
  readonly #known = new Map<string, KnownHost>([['us', { host: usHost, state: 'ready' }]]);
  readonly #listeners = new Set<() => void>();

  constructor(fetchTable: FetchTable = pageFetch) {
    this.#fetchTable = fetchTable;
  }

  /** What is known of a host now; asking for one that is not known starts loading it. */
  known(wanted: Pick<Host, 'layout' | 'variant'>): KnownHost {
    const name = tableName(wanted);
    const known = this.#known.get(name);
    if (known !== undefined) return known;
    const loading: KnownHost = { host: usHost, state: 'loading' };
    this.#known.set(name, loading);
    void this.#load(name);
    return loading;
  }

  /** Calls back whenever another host has been loaded, or could not be. */
  subscribe = (changed: () => void): (() => void) => {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  };

  async #load(name: string): Promise<void> {
    const read = await this.#tableOf(name);
    this.#known.set(
      name,
      read.ok ? { host: read.value, state: 'ready' } : { host: usHost, state: 'missing' },
    );
    for (const changed of this.#listeners) changed();
  }

  async #tableOf(name: string): Promise<Result<HostLayout, string>> {
    try {
      const table = readHostTable(await this.#fetchTable(`./hosts/${name}.json`));
      return table.ok ? ok(hostFromTable(table.value)) : table;
    } catch (error) {
      return fail(String(error));
    }
  }
}

/** The file name of a host's table: the layout, with the variant after a hyphen if it has one. */
function tableName({ layout, variant }: Pick<Host, 'layout' | 'variant'>): string {
  return variant === '' ? layout : `${layout}-${variant}`;
}

const cache = new HostCache();

/** The layout that a design's characters are typed for: its first host's. */
export function useHost(keymap: Keymap): KnownHost {
  const [first] = keymap.hosts;
  const wanted = first ?? { layout: 'us', variant: '' };
  return useSyncExternalStore(cache.subscribe, () => cache.known(wanted));
}
