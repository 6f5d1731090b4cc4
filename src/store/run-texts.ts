import type { RunCounts } from '../core/needs/counts-runs.ts';
import { readCountsTable } from '../core/needs/counts-table.ts';
import { type FetchTable, pageFetch } from './fetch-table.ts';

/** Counts of a ready text as far as they are known. */
export type KnownCounts =
  | { readonly state: 'ready'; readonly title: string; readonly counts: RunCounts }
  | { readonly state: 'loading' }
  | { readonly state: 'missing'; readonly why: string };

const LOADING: KnownCounts = { state: 'loading' };

/** The counts of ready texts, each fetched the first time that it is asked for. */
export class RunTexts {
  readonly #fetchTable: FetchTable;
  readonly #known = new Map<string, KnownCounts>();
  readonly #listeners = new Set<() => void>();

  constructor(fetchTable: FetchTable = pageFetch) {
    this.#fetchTable = fetchTable;
  }

  /** What is known now; asking for a text that is not known starts loading it. */
  known(name: string): KnownCounts {
    const known = this.#known.get(name);
    if (known !== undefined) return known;
    this.#known.set(name, LOADING);
    void this.#load(name);
    return LOADING;
  }

  /** Calls back whenever counts have come, or could not. */
  subscribe = (changed: () => void): (() => void) => {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  };

  async #load(name: string): Promise<void> {
    this.#known.set(name, await this.#read(name));
    for (const changed of this.#listeners) changed();
  }

  async #read(name: string): Promise<KnownCounts> {
    try {
      const table = readCountsTable(await this.#fetchTable(`./texts/${name}.json`));
      if (!table.ok)
        return { state: 'missing', why: `The counts of “${name}” cannot be read: ${table.problem}.` };
      return { state: 'ready', title: table.value.title, counts: table.value.counts };
    } catch {
      return { state: 'missing', why: `The counts of “${name}” could not be loaded; is there a connection?` };
    }
  }
}
