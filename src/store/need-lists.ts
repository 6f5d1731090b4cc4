import { useSyncExternalStore } from 'react';
import { languageFile, languageLists, readLanguageTable } from '../core/needs/language-table.ts';
import type { NeedList } from '../core/needs/need-list.ts';
import { needListNamed } from '../core/needs/need-lists.ts';
import type { FindList } from '../core/needs/needs-of.ts';
import { type FetchTable, pageFetch } from './fetch-table.ts';

/**
 * The need lists of spoken languages, fetched when a design first names one. While one is on its way it is an
 * empty list, so that nothing is called missing that is only late; one that cannot be had stays unknown.
 */
export class NeedListCache {
  readonly #fetchTable: FetchTable;
  readonly #lists = new Map<string, NeedList | null>();
  readonly #listeners = new Set<() => void>();
  #find: FindList;

  constructor(fetchTable: FetchTable = pageFetch) {
    this.#fetchTable = fetchTable;
    this.#find = this.#finder();
  }

  /** Finds lists as far as they are known; another function whenever more have come. */
  find = (): FindList => this.#find;

  /** Finds lists after those of some names have come, or could not; unknown names are no harm. */
  async loaded(names: readonly string[]): Promise<FindList> {
    const lists = await Promise.all(
      names.map(async (name) => {
        const file = needListNamed(name) === undefined ? languageFile(name) : undefined;
        return file === undefined ? [] : [[name, await this.#listOf(name, file)] as const];
      }),
    );
    const known = new Map(lists.flat());
    return (name) => known.get(name) ?? needListNamed(name);
  }

  /** Calls back whenever lists have come, or could not. */
  subscribe = (changed: () => void): (() => void) => {
    this.#listeners.add(changed);
    return () => this.#listeners.delete(changed);
  };

  #finder(): FindList {
    return (name) => {
      const built = needListNamed(name);
      if (built !== undefined) return built;
      const known = this.#lists.get(name);
      if (known !== undefined) return known ?? undefined;
      const file = languageFile(name);
      if (file === undefined) return undefined;
      const late: NeedList = { name, title: name, description: 'This list is on its way.', needs: [] };
      this.#lists.set(name, late);
      void this.#load(name, file);
      return late;
    };
  }

  async #load(name: string, file: string): Promise<void> {
    this.#lists.set(name, await this.#listOf(name, file));
    this.#find = this.#finder();
    for (const changed of this.#listeners) changed();
  }

  async #listOf(name: string, file: string): Promise<NeedList | null> {
    try {
      const table = readLanguageTable(await this.#fetchTable(`./needs/${file}`));
      const lists = table.ok ? languageLists(table.value) : [];
      return lists.find((list) => list.name === name) ?? null;
    } catch {
      return null;
    }
  }
}

const cache = new NeedListCache();

/** The way to find need lists once those of some names are there. */
export function loadNeedLists(names: readonly string[]): Promise<FindList> {
  return cache.loaded(names);
}

/** The way to find need lists by name, renewed when lists that a design names have been loaded. */
export function useFindList(): FindList {
  return useSyncExternalStore(cache.subscribe, cache.find);
}

/** A list of a spoken language as it can be chosen. */
export interface OfferedLanguage {
  readonly name: string;
  readonly title: string;
  /** How many needs it holds. */
  readonly count: number;
}

/** The lists of spoken languages that come with the page, by title; none where they cannot be had. */
export async function loadOfferedLanguages(
  fetchTable: FetchTable = pageFetch,
): Promise<readonly OfferedLanguage[]> {
  try {
    const list = await fetchTable('./needs/index.json');
    return Array.isArray(list) ? list.filter(isOffered) : [];
  } catch {
    return [];
  }
}

function isOffered(value: unknown): value is OfferedLanguage {
  const { name, title, count } = (value ?? {}) as Partial<Record<keyof OfferedLanguage, unknown>>;
  return typeof name === 'string' && typeof title === 'string' && typeof count === 'number';
}
