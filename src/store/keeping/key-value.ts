import { createStore, del, get, keys, set } from 'idb-keyval';

/** A place that keeps values by name; IndexedDB in the page, a map in tests. Everything may fail with a reason. */
export interface KeyValue {
  get(name: string): Promise<unknown>;
  set(name: string, value: unknown): Promise<void>;
  del(name: string): Promise<void>;
  names(): Promise<readonly string[]>;
}

/** The browser's database that a page of this project keeps designs in. */
const DESIGNS = { database: 'handful', store: 'designs' };

/**
 * IndexedDB where it can be used, else the page's memory: some browsers refuse it in private windows. `keeps`
 * says which of the two it is. A database has one store, so other things than designs have a database of their own.
 */
export function indexedDbOrMemory(where = DESIGNS): {
  readonly values: KeyValue;
  readonly keeps: Promise<boolean>;
} {
  const disk = (async () => {
    const values = indexedDbKeyValue(where);
    await values.names();
    return values;
  })();
  const chosen: Promise<KeyValue> = disk.catch(() => memoryOf(where.database));
  const values: KeyValue = {
    get: async (name) => (await chosen).get(name),
    set: async (name, value) => (await chosen).set(name, value),
    del: async (name) => (await chosen).del(name),
    names: async () => (await chosen).names(),
  };
  return {
    values,
    keeps: disk.then(
      () => true,
      () => false,
    ),
  };
}

const memories = new Map<string, KeyValue>();

/** The memory that stands in for a database: the same for all who ask for it. */
function memoryOf(database: string): KeyValue {
  const memory = memories.get(database) ?? memoryKeyValue();
  memories.set(database, memory);
  return memory;
}

/** The browser's own IndexedDB, in a database of this page's own. */
function indexedDbKeyValue(where: typeof DESIGNS): KeyValue {
  const store = createStore(where.database, where.store);
  return {
    get: (name) => get(name, store),
    set: (name, value) => set(name, value, store),
    del: (name) => del(name, store),
    names: async () => (await keys(store)).filter((name) => typeof name === 'string'),
  };
}

/** Keeps values for as long as the page is open: for a browser that refuses IndexedDB. */
export function memoryKeyValue(): KeyValue {
  const values = new Map<string, unknown>();
  return {
    get: async (name) => structuredClone(values.get(name)),
    set: async (name, value) => {
      values.set(name, structuredClone(value));
    },
    del: async (name) => {
      values.delete(name);
    },
    names: async () => [...values.keys()],
  };
}
