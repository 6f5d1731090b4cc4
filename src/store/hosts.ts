import { useSyncExternalStore } from 'react';
import { fail, ok, type Result } from '../core/base/result.ts';
import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import { readHostTable } from '../core/host/host-table.ts';
import { usHost } from '../core/host/us.ts';
import type { Host, Keymap } from '../core/keymap/types.ts';
import { type FetchTable, pageFetch } from './fetch-table.ts';

/** A host layout as far as it is known: while it is loaded, and where there is none, `us` stands in. */
export interface KnownHost {
  readonly host: HostLayout;
  readonly state: 'ready' | 'loading' | 'missing';
}

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

  /** A host once it is loaded; `us` where it cannot be. */
  whenLoaded(wanted: Pick<Host, 'layout' | 'variant'>): Promise<HostLayout> {
    return new Promise((resolve) => {
      const look = () => {
        const { host, state } = this.known(wanted);
        if (state === 'loading') return;
        stop();
        resolve(host);
      };
      const stop = this.subscribe(look);
      look();
    });
  }

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

/** Loads a host layout; `us` where there is none by that name. */
export function loadHost(wanted: Pick<Host, 'layout' | 'variant'>): Promise<HostLayout> {
  return cache.whenLoaded(wanted);
}

/** A host layout that can be chosen: XKB's names and title. */
export interface OfferedHost {
  readonly layout: string;
  readonly variant: string;
  readonly title: string;
}

const US: OfferedHost = { layout: 'us', variant: '', title: 'English (US)' };

/** The host layouts that come with the page, in the order of its list; `us` alone where the list cannot be had. */
export async function loadOfferedHosts(fetchTable: FetchTable = pageFetch): Promise<readonly OfferedHost[]> {
  try {
    const list = await fetchTable('./hosts/index.json');
    const hosts = Array.isArray(list) ? list.filter(isOffered) : [];
    return hosts.length === 0 ? [US] : hosts;
  } catch {
    return [US];
  }
}

function isOffered(value: unknown): value is OfferedHost {
  const named = value as Partial<Record<keyof OfferedHost, unknown>> | null;
  return [named?.layout, named?.variant, named?.title].every((part) => typeof part === 'string');
}

/** The layout that a design's characters are typed for: its first host's. */
export function useHost(keymap: Keymap): KnownHost {
  const [first] = keymap.hosts;
  const wanted = first ?? { layout: 'us', variant: '' };
  return useSyncExternalStore(cache.subscribe, () => cache.known(wanted));
}
