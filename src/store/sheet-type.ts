import { useSyncExternalStore } from 'react';
import { readSheetType, type SheetType } from '../core/drawing/sheet-type.ts';
import { type FetchTable, pageFetch } from './fetch-table.ts';

/** The letters of the sheet as far as they are known. */
export type KnownType =
  | { readonly state: 'loading' }
  | { readonly state: 'missing'; readonly why: string }
  | { readonly state: 'ready'; readonly type: SheetType };

/** Loads the letters once, when they are first asked for. What failed is tried again when it is asked for anew. */
export class TypeLoader {
  readonly #fetchTable: FetchTable;
  readonly #listeners = new Set<() => void>();
  #known: KnownType = { state: 'loading' };
  #begun = false;

  constructor(fetchTable: FetchTable = pageFetch) {
    this.#fetchTable = fetchTable;
  }

  known = (): KnownType => this.#known;

  subscribe = (changed: () => void): (() => void) => {
    this.#listeners.add(changed);
    if (!this.#begun) void this.#load();
    return () => this.#listeners.delete(changed);
  };

  async #load(): Promise<void> {
    this.#begun = true;
    this.#known = await this.#read();
    this.#begun = this.#known.state === 'ready';
    for (const changed of this.#listeners) changed();
  }

  async #read(): Promise<KnownType> {
    try {
      const read = readSheetType(await this.#fetchTable('./sheet-type.json'));
      return read.ok ? { state: 'ready', type: read.value } : { state: 'missing', why: read.problem };
    } catch (error) {
      return { state: 'missing', why: String(error) };
    }
  }
}

const loader = new TypeLoader();

/** The letters that sheets are set in, loaded when they are first needed. */
export function useSheetType(): KnownType {
  return useSyncExternalStore(loader.subscribe, loader.known);
}
