import { createStore, type StoreApi } from 'zustand/vanilla';
import type { Keymap } from '../../core/keymap/types.ts';
import type { KeyValue } from '../keeping/key-value.ts';
import { isDue, KEPT_VERSIONS, listedVersions, readVersions, type Version, withVersion } from './version.ts';

export interface VersionsState {
  /** The design whose versions these are; null before any were asked for. */
  readonly designId: string | null;
  /** The newest first. */
  readonly versions: readonly Version[];
  /** Why the versions could not be read; null where they could. */
  readonly problem: string | null;
  /** Takes up the versions of a design. */
  load(designId: string): Promise<void>;
  /** Keeps a state under a name; false where there are as many named ones as can be kept. */
  keep(designId: string, keymap: Keymap, name: string): Promise<boolean>;
  /** Work has begun on a state of a design: keeps that state by itself where it is time to. */
  worked(designId: string, before: Keymap): Promise<void>;
  rename(designId: string, id: string, name: string): Promise<void>;
  remove(designId: string, id: string): Promise<void>;
  /** Drops all versions of a design that is gone. */
  forget(designId: string): Promise<void>;
}

/** What the keeping of versions is made of; time and ids are handed in. */
export interface VersionsParts {
  readonly values: Pick<KeyValue, 'get' | 'set' | 'del'>;
  readonly now: () => number;
  readonly newId: () => string;
}

/** The versions of designs, kept by the design's id. Changes of one design never overlap. */
export function makeVersions({ values, now, newId }: VersionsParts): StoreApi<VersionsState> {
  let running: Promise<unknown> = Promise.resolve();
  const inTurn = <Outcome>(work: () => Promise<Outcome>): Promise<Outcome> => {
    const mine = running.then(work, work);
    running = mine.catch(() => undefined);
    return mine;
  };
  return createStore<VersionsState>((set, get) => {
    const read = async (designId: string) => readVersions(await values.get(designId));
    const change = async (
      designId: string,
      to: (versions: readonly Version[]) => readonly Version[] | null,
    ) => {
      const after = to(listedVersions(await values.get(designId)));
      if (after === null) return false;
      await values.set(designId, after);
      const { designId: shown, versions } = get();
      if (shown === designId) set({ versions: to(versions) ?? versions });
      return true;
    };
    const versionOf = (keymap: Keymap, name: string | null): Version => ({
      id: newId(),
      name,
      keptAt: now(),
      keymap,
    });
    return {
      designId: null,
      versions: [],
      problem: null,
      load: (designId) =>
        inTurn(async () => {
          try {
            set({ designId, versions: await read(designId), problem: null });
          } catch (error) {
            set({ designId, versions: [], problem: error instanceof Error ? error.message : String(error) });
          }
        }),
      keep: (designId, keymap, name) => {
        const added = versionOf(keymap, name);
        return inTurn(() =>
          change(designId, (versions) => {
            const named = versions.filter((version) => version.name !== null).length;
            return named >= KEPT_VERSIONS.named ? null : withVersion(versions, added);
          }),
        );
      },
      worked: (designId, before) => {
        const added = versionOf(before, null);
        return inTurn(async () => {
          await change(designId, (versions) =>
            isDue(versions, before, added.keptAt) ? withVersion(versions, added) : null,
          );
        });
      },
      rename: (designId, id, name) =>
        inTurn(async () => {
          await change(designId, (versions) =>
            versions.map((version) => (version.id === id ? { ...version, name } : version)),
          );
        }),
      remove: (designId, id) =>
        inTurn(async () => {
          await change(designId, (versions) => versions.filter((version) => version.id !== id));
        }),
      forget: (designId) =>
        inTurn(async () => {
          await values.del(designId);
          if (get().designId === designId) set({ designId: null, versions: [] });
        }),
    };
  });
}
