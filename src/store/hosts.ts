import { useSyncExternalStore } from 'react';
import { fail, type Result } from '../core/base/result.ts';
import { correctedTable } from '../core/host/corrected-host.ts';
import { hostFromTable } from '../core/host/host-from-table.ts';
import type { HostLayout } from '../core/host/host-layout.ts';
import { type HostTable, readHostTable } from '../core/host/host-table.ts';
import { usHost } from '../core/host/us.ts';
import { usTable } from '../core/host/us-table.ts';
import type { Correction, Host, Keymap } from '../core/keymap/types.ts';
import { type FetchTable, pageFetch } from './fetch-table.ts';

/** A host of a design, or as much of it as says how it reads the keys. */
type WantedHost = Pick<Host, 'layout' | 'variant' | 'corrections'>;

/**
 * A host layout as far as it is known, with the corrections that were asked for. While it is loaded, and where there
 * is none, `us` stands in as it is.
 */
export interface KnownHost {
  readonly host: HostLayout;
  readonly table: HostTable;
  readonly state: 'ready' | 'loading' | 'missing';
}

/**
 * The host layouts that have been loaded. `us` is there from the start; every other is fetched the first time
 * that a design asks for it.
 */
export class HostCache {
  readonly #fetchTable: FetchTable;
  readonly #known = new Map<string, KnownHost>([['us', { host: usHost, table: usTable, state: 'ready' }]]);
  readonly #corrected = new WeakMap<readonly Correction[], { from: KnownHost; to: KnownHost }>();
  readonly #listeners = new Set<() => void>();

  constructor(fetchTable: FetchTable = pageFetch) {
    this.#fetchTable = fetchTable;
  }

  /** What is known of a host now; asking for one that is not known starts loading it. */
  known(wanted: WantedHost): KnownHost {
    const known = this.#knownTable(tableName(wanted));
    const { corrections = [] } = wanted;
    if (known.state !== 'ready' || corrections.length === 0) return known;
    const before = this.#corrected.get(corrections);
    if (before?.from === known) return before.to;
    const table = correctedTable(known.table, corrections);
    const to: KnownHost = { host: hostFromTable(table), table, state: 'ready' };
    this.#corrected.set(corrections, { from: known, to });
    return to;
  }

  #knownTable(name: string): KnownHost {
    const known = this.#known.get(name);
    if (known !== undefined) return known;
    const loading: KnownHost = { host: usHost, table: usTable, state: 'loading' };
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
  whenLoaded(wanted: WantedHost): Promise<HostLayout> {
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
      read.ok
        ? { host: hostFromTable(read.value), table: read.value, state: 'ready' }
        : { host: usHost, table: usTable, state: 'missing' },
    );
    for (const changed of this.#listeners) changed();
  }

  async #tableOf(name: string): Promise<Result<HostTable, string>> {
    try {
      return readHostTable(await this.#fetchTable(`./hosts/${name}.json`));
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
export function loadHost(wanted: WantedHost): Promise<HostLayout> {
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

const US_WANTED: WantedHost = US;

/** The layout that a design's characters are typed for: its first host's. */
export function useHost(keymap: Keymap): KnownHost {
  return useHostLayout(keymap.hosts[0] ?? US_WANTED);
}

/** What is known of a host, renewed when it has been loaded. */
export function useHostLayout(wanted: WantedHost): KnownHost {
  return useSyncExternalStore(cache.subscribe, () => cache.known(wanted));
}
