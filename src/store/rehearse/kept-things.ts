import { createStore, type StoreApi } from 'zustand/vanilla';
import type { KeyValue } from '../keeping/key-value.ts';

/** Something that is kept with the browser under an id. */
export interface KeptThing<Value> {
  readonly id: string;
  /** ms since 1970. */
  readonly keptAt: number;
  readonly value: Value;
  /** The design that was open when it was kept; things of earlier visits may have none. */
  readonly design?: string;
}

export interface KeptThings<Value> {
  /** The one kept last first. */
  readonly things: readonly KeptThing<Value>[];
  /** Why the last change could not be written; it is there for this visit all the same. */
  readonly problem: string | null;
  /** Takes up what is kept, once. What cannot be read is left where it is. */
  start(): Promise<void>;
  /** Keeps a new thing, or in place of the one of that id; gives the id. */
  keep(value: Value, id?: string, design?: string): Promise<string>;
  /** Changes those that were kept with a design, and leaves their order as it is. */
  changeOf(design: string, to: (value: Value) => Value): Promise<void>;
  remove(id: string): Promise<void>;
}

/** Takes a stored value if it is one. */
export type ReadKept<Value> = (stored: unknown) => Value | null;

/** Things kept by id among `values`, each read by `read`. */
export function makeKeptThings<Value>(
  values: KeyValue,
  read: ReadKept<Value>,
  now: () => number,
  newId: () => string,
): StoreApi<KeptThings<Value>> {
  let started: Promise<void> | undefined;
  return createStore<KeptThings<Value>>()((set, get) => {
    const write = async (done: Promise<void>) => {
      const problem = await done.then(
        () => null,
        (error: unknown) => (error instanceof Error ? error.message : String(error)),
      );
      set({ problem });
    };
    const load = async () => {
      const names = await values.names();
      const stored = await Promise.all(names.map(async (id) => keptThing(id, await values.get(id), read)));
      const kept = stored.filter((thing) => thing !== null);
      const own = new Set(get().things.map(({ id }) => id));
      set(({ things }) => ({
        things: [...things, ...kept.filter(({ id }) => !own.has(id))].sort(lastFirst),
      }));
    };
    return {
      things: [],
      problem: null,
      start: () => {
        started ??= load();
        return started;
      },
      keep: async (value, id = newId(), design) => {
        const thing = { id, keptAt: now(), value, ...(design !== undefined && { design }) };
        set(({ things }) => ({ things: [thing, ...things.filter((each) => each.id !== id)] }));
        await write(values.set(id, thing));
        return id;
      },
      changeOf: async (design, to) => {
        started ??= load();
        await started;
        const change = (thing: KeptThing<Value>) =>
          thing.design === design ? { ...thing, value: to(thing.value) } : thing;
        set(({ things }) => ({ things: things.map(change) }));
        const changed = get().things.filter((thing) => thing.design === design);
        await write(Promise.all(changed.map((thing) => values.set(thing.id, thing))).then(() => undefined));
      },
      remove: async (id) => {
        set(({ things }) => ({ things: things.filter((each) => each.id !== id) }));
        await write(values.del(id));
      },
    };
  });
}

function keptThing<Value>(id: string, stored: unknown, read: ReadKept<Value>): KeptThing<Value> | null {
  if (typeof stored !== 'object' || stored === null || !('value' in stored) || !('keptAt' in stored))
    return null;
  const value = read(stored.value);
  if (value === null || typeof stored.keptAt !== 'number') return null;
  const design = 'design' in stored && typeof stored.design === 'string' ? { design: stored.design } : {};
  return { id, keptAt: stored.keptAt, value, ...design };
}

function lastFirst(one: KeptThing<unknown>, other: KeptThing<unknown>): number {
  return other.keptAt - one.keptAt || (one.id < other.id ? -1 : 1);
}
